using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;

namespace GrindShop.Web.Public.Learn;

/// <summary>Where the reader has set the figures of an example. They stand in the address, so that a link shows the same picture.</summary>
public sealed class LearnValues
{
    private const int MostKeys = 20, LongestText = 40;
    private readonly SortedDictionary<string, string> _texts = [];

    public static LearnValues Read(string query)
    {
        var values = new LearnValues();
        foreach (var (key, text) in QueryHelpers.ParseQuery(query).Take(MostKeys).Where(pair => pair.Value.ToString().Length <= LongestText))
            values._texts[key] = text.ToString();
        return values;
    }

    public double this[LearnSlider slider]
    {
        get => double.TryParse(_texts.GetValueOrDefault(slider.Key), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? slider.Stop(value) : slider.Usual;
        set => _texts[slider.Key] = slider.Stop(value).ToString("0.####", CultureInfo.InvariantCulture);
    }

    /// <summary>A choice by its name; null where none, or none of these, was made.</summary>
    public T? Choice<T>(string key) where T : struct, Enum =>
        Enum.TryParse<T>(_texts.GetValueOrDefault(key), ignoreCase: true, out var choice) && Enum.IsDefined(choice) ? choice : null;

    public string? Text(string key) => _texts.GetValueOrDefault(key);

    public void Choose(string key, string? text) => _texts[key] = text ?? "";

    public LearnValues Again()
    {
        var again = new LearnValues();
        foreach (var (key, text) in _texts)
            again._texts[key] = text;
        return again;
    }

    /// <summary>The page that shows a topic with these figures.</summary>
    public string Link(LearnTopic topic) => QueryHelpers.AddQueryString(topic.Address, _texts.Where(pair => pair.Value.Length > 0).Select(pair => KeyValuePair.Create(pair.Key, (string?)pair.Value)));
}
