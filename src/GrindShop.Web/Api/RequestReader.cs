using System.Collections;
using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Reflection;
using System.Text.Json;

namespace GrindShop.Web.Api;

/// <summary>
/// Reads a JSON body into a request type, field by field, and collects every wrong field by its path. The types' own
/// <see cref="RequiredAttribute"/>, <see cref="RangeAttribute"/>, <see cref="MaxLengthAttribute"/> and <see cref="AllowedValuesAttribute"/> decide,
/// and the OpenAPI document shows the same.
/// </summary>
internal sealed class RequestReader(FieldProblems problems)
{
    /// <summary>The request, or null when anything was wrong with it.</summary>
    public static async Task<T?> ReadAsync<T>(HttpRequest request, FieldProblems problems)
        where T : class
    {
        try
        {
            using var body = await JsonDocument.ParseAsync(request.Body, default, request.HttpContext.RequestAborted);
            var value = (T?)new RequestReader(problems).Object(typeof(T), body.RootElement, "");
            return problems.Any ? null : value;
        }
        catch (JsonException error)
        {
            problems.Add("body", $"The body is not JSON (line {error.LineNumber + 1}, byte {error.BytePositionInLine + 1}). Numbers such as NaN or Infinity are not JSON.");
            return null;
        }
    }

    private object? Object(Type type, JsonElement element, string path)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            problems.Add(path.Length == 0 ? "body" : path, "must be a JSON object.");
            return null;
        }
        var value = Activator.CreateInstance(type)!;
        foreach (var property in type.GetProperties().Where(property => property.CanWrite))
            Property(value, property, element, path);
        return value;
    }

    private void Property(object owner, PropertyInfo property, JsonElement element, string path)
    {
        var name = JsonNamingPolicy.CamelCase.ConvertName(property.Name);
        var field = path.Length == 0 ? name : $"{path}.{name}";
        if (!element.TryGetProperty(name, out var given) || given.ValueKind == JsonValueKind.Null)
        {
            if (property.IsDefined(typeof(RequiredAttribute)))
                problems.Add(field, $"{name} is required{RangeWords(property)}.");
            return;
        }
        if (Value(property, property.PropertyType, given, field, name) is { } value)
            property.SetValue(owner, value);
    }

    private object? Value(PropertyInfo property, Type type, JsonElement given, string field, string name)
    {
        var plain = Nullable.GetUnderlyingType(type) ?? type;
        if (plain == typeof(double))
            return Number(property, given, field, name);
        if (plain == typeof(string))
            return Text(property, given, field, name);
        if (plain == typeof(bool))
            return YesOrNo(given, field, name);
        if (plain.IsArray)
            return Array(property, plain.GetElementType()!, given, field, name);
        return Object(plain, given, field);
    }

    private object? Number(PropertyInfo property, JsonElement given, string field, string name)
    {
        if (given.ValueKind == JsonValueKind.Number && given.TryGetDouble(out var number) && double.IsFinite(number) && InRange(property, number))
            return number;
        problems.Add(field, $"{name} must be a number{RangeWords(property)}.");
        return null;
    }

    private object? YesOrNo(JsonElement given, string field, string name)
    {
        if (given.ValueKind is JsonValueKind.True or JsonValueKind.False)
            return given.GetBoolean();
        problems.Add(field, $"{name} must be true or false.");
        return null;
    }

    private object? Text(PropertyInfo property, JsonElement given, string field, string name)
    {
        if (given.ValueKind != JsonValueKind.String || Characters(given) is not { } text)
            problems.Add(field, $"{name} must be a text of valid characters.");
        else if (property.GetCustomAttribute<AllowedValuesAttribute>() is { } allowed && !allowed.Values.Contains(text))
            problems.Add(field, $"{name} must be one of: {string.Join(", ", allowed.Values)}.");
        else if (property.GetCustomAttribute<MaxLengthAttribute>() is { } most && text.Length > most.Length)
            problems.Add(field, $"{name} must be at most {most.Length} characters long.");
        else
            return text;
        return null;
    }

    /// <summary>Null where the bytes are no UTF-8 or an escape is half a character.</summary>
    private static string? Characters(JsonElement given)
    {
        try
        {
            return given.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private Array? Array(PropertyInfo property, Type elementType, JsonElement given, string field, string name)
    {
        var most = property.GetCustomAttribute<MaxLengthAttribute>()?.Length ?? 100;
        if (given.ValueKind != JsonValueKind.Array || given.GetArrayLength() > most)
        {
            problems.Add(field, $"{name} must be a list of at most {most} entries.");
            return null;
        }
        var values = new ArrayList();
        foreach (var (entry, i) in given.EnumerateArray().Select((entry, i) => (entry, i)))
            if (Value(property, elementType, entry, $"{field}[{i}]", name) is { } value)
                values.Add(value);
        return values.ToArray(elementType);
    }

    private static bool InRange(PropertyInfo property, double number) =>
        property.GetCustomAttribute<RangeAttribute>() is not { } range || (number >= Convert.ToDouble(range.Minimum, CultureInfo.InvariantCulture) && number <= Convert.ToDouble(range.Maximum, CultureInfo.InvariantCulture));

    private static string RangeWords(PropertyInfo property) => property.GetCustomAttribute<RangeAttribute>() is { } range
        ? string.Create(CultureInfo.InvariantCulture, $" between {range.Minimum} and {range.Maximum}{Unit(property.Name)}")
        : "";

    /// <summary>The unit that the field's name carries.</summary>
    private static string Unit(string name) =>
        name.EndsWith("CrankDeg", StringComparison.Ordinal) ? " crank degrees"
        : name.EndsWith("CamDeg", StringComparison.Ordinal) ? " cam degrees"
        : name.EndsWith("In", StringComparison.Ordinal) ? " in"
        : name.EndsWith("Psi", StringComparison.Ordinal) ? " psi"
        : name.EndsWith("Lbf", StringComparison.Ordinal) ? " lbf"
        : "";
}
