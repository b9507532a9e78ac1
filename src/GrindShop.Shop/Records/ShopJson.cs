using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace GrindShop.Shop.Records;

/// <summary>The one way in which the shop writes JSON: camelCase, enumerations by name, blank fields left out.</summary>
public static class ShopJson
{
    public static readonly JsonSerializerOptions Options = Configure(new JsonSerializerOptions(JsonSerializerDefaults.Web));

    public static JsonSerializerOptions Configure(JsonSerializerOptions options)
    {
        options.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false));
        return options;
    }

    /// <summary>Keeps an immutable value as one jsonb column; a change is a new value, so that the reference tells.</summary>
    public static PropertyBuilder<T> HasJson<T>(this PropertyBuilder<T> property) => property
        .HasColumnType("jsonb")
        .HasConversion(value => JsonSerializer.Serialize(value, Options), text => JsonSerializer.Deserialize<T>(text, Options)!,
            new ValueComparer<T>((one, other) => ReferenceEquals(one, other), value => RuntimeHelpers.GetHashCode(value), value => value));
}
