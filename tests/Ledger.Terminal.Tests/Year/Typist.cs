namespace Ledger.Terminal.Tests.Year;

/// <summary>Works the screens by keys alone: goes to a form, types what it does not offer, and saves it.</summary>
/// <param name="screen">The screen.</param>
internal sealed class Typist(Screen screen)
{
    /// <summary>How many keys were pressed so far.</summary>
    public int Keys { get; private set; }

    /// <summary>Presses letters and digits that are no text: the keys of the screens.</summary>
    public Typist On(string keys)
    {
        Press([.. keys.Select(key => new Key(key))]);
        return this;
    }

    /// <summary>Opens the list of actions, types what is looked for and takes the nearest.</summary>
    public Typist Find(string words) => Press(Key.F2).On(words).Press(Key.Enter);

    /// <summary>Presses keys.</summary>
    public Typist Press(params Key[] keys)
    {
        screen.Send(keys);
        Keys += keys.Length;
        return this;
    }

    /// <summary>Whether what the form asks about is so.</summary>
    public bool IsSo { get; set; }

    /// <summary>
    /// Fills in the form and saves it. A label that stands in several lines is answered line by line. What the form
    /// offers is left as it is.
    /// </summary>
    public void Fill(params IEnumerable<(string Label, string Text)> answers)
    {
        var all = answers.ToList();
        var times = new Dictionary<string, int>();
        foreach (var (label, text) in all)
        {
            var before = times.GetValueOrDefault(label);
            times[label] = before + 1;
            Answer(Field(label, before), text);
        }

        times.Clear();
        foreach (var (label, text) in all)
        {
            var before = times.GetValueOrDefault(label);
            times[label] = before + 1;
            Assert.Equal($"{label}: {text}", $"{label}: {Field(label, before).Text}");
        }

        if (IsSo)
            Press(Key.F6);
        var seen = screen.Text;
        Assert.DoesNotContain("Not complete yet", seen);
        Assert.DoesNotContain("This cannot be saved", seen);
        Press(Key.F8);
        Assert.Contains("Entry ", screen.Text);
        Assert.False(screen.Shell.Page is FormPage, screen.Text);
    }

    /// <summary>Whether the form asks for something.</summary>
    public bool Has(string label) => Form.Fields.Any(field => field.Label == label);

    private Form Form => Assert.IsType<FormPage>(screen.Shell.Page).Form;

    private FormField? Here => screen.Shell.MostFocused switch
    {
        FieldBox box => box.Field,
        PressBox box => box.Field,
        _ => null,
    };

    private FormField Field(string label, int before) =>
        Form.Fields.Where(field => field.Label == label).ElementAtOrDefault(before)
        ?? throw new InvalidOperationException(
            $"the form {Form.Title} has no {before + 1}. field \"{label}\"\n{screen.Text}");

    private void Answer(FormField field, string text)
    {
        if (field.Text == text)
            return;
        GoTo(field);
        if (field.Kind == FieldKind.Tick)
            Press(Key.Space);
        else if (text.Length == 0)
            Press(Key.Delete);
        else
            Press([.. text.Select(letter => new Key(letter))]);
    }

    private void GoTo(FormField field)
    {
        var fields = Form.Fields.ToList();
        var here = Here is { } known ? fields.IndexOf(known) : fields.Count;
        var step = here <= fields.IndexOf(field) ? Key.Tab : Key.Tab.WithShift;
        for (var tried = 0; !IsAt(field); tried++)
        {
            if (tried > fields.Count)
                Assert.Fail($"no key leads to \"{field.Label}\"\n{screen.Text}");
            Press(step);
        }
    }

    private bool IsAt(FormField field) => Here == field;
}
