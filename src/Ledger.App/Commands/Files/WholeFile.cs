namespace Ledger.App.Commands.Files;

/// <summary>Writes a file that appears under its name only when it is whole.</summary>
internal static class WholeFile
{
    public static void Write(string path, Action<Stream> write)
    {
        var unfinished = path + ".part";
        try
        {
            using (var file = File.Create(unfinished))
                write(file);
            File.Move(unfinished, path, overwrite: true);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }
}
