using System.Collections;
using System.Reflection;

namespace Ledger.Exchange.Tests.Import;

/// <summary>What an entry holds, property by property, to be compared: lists by what is in them.</summary>
internal static class EntryWhole
{
    public static string Of(Entry entry) => $"{entry.GetType().Name}{Of((object)entry)}";

    private static string Of(object? value)
    {
        if (value is IEnumerable list and not string)
            return $"[{string.Join(", ", list.Cast<object>().Select(Of))}]";
        if (value is null || value.GetType().Assembly != typeof(Entry).Assembly || value.GetType().IsEnum)
            return string.Create(CultureInfo.InvariantCulture, $"{value}");
        return $"{{{string.Join(", ", value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0 && property.PropertyType.Namespace != "Ledger.Core.Costing"
                && property.Name is not (nameof(Entry.FormerKeys) or nameof(Entry.Denies) or nameof(Entry.IsTyped)))
            .Select(property => $"{property.Name}={Of(property.GetValue(value))}"))}}}";
    }
}
