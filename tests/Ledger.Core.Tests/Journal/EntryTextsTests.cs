using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using Ledger.Core.Journal.Rules;

namespace Ledger.Core.Tests.Journal;

/// <summary>No text of any kind of entry goes past the check, however deep it stands in it.</summary>
public class EntryTextsTests
{
    private const string Escape = "a\u001B]52;c;x\u0007b";

    public static TheoryData<Type> Kinds =>
        [.. typeof(Entry).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Entry)) && !type.IsAbstract)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_text_of_every_kind_is_checked(Type kind)
    {
        var places = new List<string>();
        Fill(kind, kind.Name, places, at: null);
        Assert.Contains($"{kind.Name}.Note", places);
        foreach (var place in places)
        {
            var entry = (Entry)Fill(kind, kind.Name, [], place)!;
            var refused = Assert.Throws<RefusedException>(() => EntryTexts.Checked(entry));
            Assert.Contains("U+001B", refused.Message, StringComparison.Ordinal);
            Assert.Contains("character 2", refused.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_is_fine_comes_out_as_it_went_in(Type kind)
    {
        var entry = (Entry)Fill(kind, kind.Name, [], at: null)!;
        Assert.Equal(Texts(entry), Texts(EntryTexts.Checked(entry)));
    }

    [Fact]
    public void A_tab_becomes_a_blank_and_a_line_break_stays_in_a_note_only()
    {
        var entry = new Discard { Key = "k", Date = new(2026, 3, 1), What = "F4", Reason = "spent\tand old",
            Note = "one\r\ntwo" };
        var kept = (Discard)EntryTexts.Checked(entry);
        Assert.Equal("spent and old", kept.Reason);
        Assert.Equal("one\ntwo", kept.Note);
        Assert.Throws<RefusedException>(() => EntryTexts.Checked(entry with { Reason = "one\ntwo" }));
        Assert.Throws<RefusedException>(() => EntryTexts.Checked(entry with { Key = "k\tk" }));
    }

    /// <summary>
    /// An object whose every text is filled in; the one at <paramref name="at"/> with what must be refused.
    /// </summary>
    private static object? Fill(Type type, string path, List<string> places, string? at)
    {
        if (type == typeof(string))
        {
            places.Add(path);
            return path == at ? Escape : "x";
        }

        if (type == typeof(GroupTimes))
            return GroupTimes.None;
        if (type == typeof(Format))
            return Format.Parse("8x10");
        if (Element(type) is { } element)
        {
            var list = Array.CreateInstance(element, 1);
            list.SetValue(Fill(element, path + "[]", places, at), 0);
            return list;
        }

        if (!IsOurs(type))
            return type.IsValueType ? Activator.CreateInstance(type) : null;
        var made = RuntimeHelpers.GetUninitializedObject(type);
        foreach (var field in Fields(type))
        {
            var name = field.Name.TrimStart('<').Split('>')[0];
            if (name is nameof(Entry.FormerKeys) or nameof(Entry.Denies)) // only looked up, never written
            {
                field.SetValue(made, Array.CreateInstance(Element(field.FieldType)!, 0));
                continue;
            }

            field.SetValue(made, Fill(field.FieldType, $"{path}.{name}", places, at));
        }

        return made;
    }

    private static IEnumerable<string> Texts(object? value) => value switch
    {
        null => [],
        string text => [text],
        IEnumerable list => list.Cast<object>().SelectMany(Texts),
        _ when IsOurs(value.GetType()) => Fields(value.GetType()).SelectMany(field => Texts(field.GetValue(value))),
        _ => [],
    };

    private static Type? Element(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>)
            ? type.GetGenericArguments()[0]
            : null;

    private static bool IsOurs(Type type) =>
        type.IsClass && type.Namespace?.StartsWith("Ledger.Core", StringComparison.Ordinal) == true
            && type != typeof(Dilution)
        && type != typeof(FormatVolumes);

    private static IEnumerable<FieldInfo> Fields(Type type)
    {
        for (var up = type; up is not null && up != typeof(object); up = up.BaseType!)
            foreach (var field in up.GetFields(
                BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly))
                yield return field;
    }
}
