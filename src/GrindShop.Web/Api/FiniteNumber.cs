using System.Text.Json;
using System.Text.Json.Serialization;

namespace GrindShop.Web.Api;

/// <summary>JSON has no infinity: a number that is none is written as null.</summary>
internal sealed class FiniteNumber : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        if (double.IsFinite(value))
            writer.WriteNumberValue(value);
        else
            writer.WriteNullValue();
    }
}
