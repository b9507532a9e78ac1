using System.Text.Json;
using System.Text.Json.Nodes;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Desk;

/// <summary>A field that somebody changed: its name, what stood there and what stands there now; null for blank.</summary>
public sealed record SpecChange(string Name, string? Was, string? Now)
{
    public static IReadOnlyList<SpecChange> Between(CamSpec older, CamSpec newer) =>
    [
        .. SpecWords.Fields.Select(field => new SpecChange(field.Name, field.Read(older), field.Read(newer))).Where(change => change.Was != change.Now),
    ];

    /// <summary>What was typed on an older specification, carried to a newer one: fields that were not touched take the newer value.</summary>
    public static CamSpec Carry(CamSpec basis, CamSpec typed, CamSpec newer) =>
        Carry(Node(basis), Node(typed), Node(newer)).Deserialize<CamSpec>(ShopJson.Options) ?? typed;

    private static JsonNode? Carry(JsonNode? basis, JsonNode? typed, JsonNode? newer)
    {
        if (JsonNode.DeepEquals(basis, typed))
            return newer?.DeepClone();
        if (typed is not JsonObject fields || newer is not JsonObject others)
            return typed?.DeepClone();
        var names = fields.Select(field => field.Key).Union(others.Select(field => field.Key));
        return new JsonObject(names.Select(name => KeyValuePair.Create(name, Carry(basis?[name], fields[name], others[name]))));
    }

    private static JsonNode? Node(CamSpec spec) => JsonSerializer.SerializeToNode(spec, ShopJson.Options);
}
