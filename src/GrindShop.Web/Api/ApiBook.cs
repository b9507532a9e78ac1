using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace GrindShop.Web.Api;

/// <summary>One field of a request or an answer, by its path.</summary>
public sealed record ApiField(string Path, string Kind, string Range, bool IsRequired);

/// <summary>One call of the API as people read it.</summary>
public sealed record ApiCall(string Method, string Address, string Group, string Summary, IReadOnlyList<ApiField> Takes, IReadOnlyList<ApiField> Answers);

/// <summary>The OpenAPI document as a list of calls, so that the page and the document never disagree.</summary>
public sealed class ApiBook([FromKeyedServices(ApiBook.Document)] IOpenApiDocumentProvider documents)
{
    public const string Document = "v1";
    private const string Json = "application/json";
    private const int Deepest = 6;

    public async Task<IReadOnlyList<ApiCall>> CallsAsync(CancellationToken cancel = default)
    {
        var document = await documents.GetOpenApiDocumentAsync(cancel);
        return [.. document.Paths.SelectMany(path => (path.Value.Operations ?? []).Select(operation => Call(path.Key, operation.Key.Method, operation.Value)))];
    }

    private static ApiCall Call(string address, string method, OpenApiOperation operation) => new(
        method, address, operation.Tags?.FirstOrDefault()?.Name ?? "", operation.Summary ?? "",
        Fields(Schema(operation.RequestBody?.Content)), Fields(Answer(operation)));

    private static IOpenApiSchema? Answer(OpenApiOperation operation) =>
        operation.Responses is { } responses && responses.TryGetValue("200", out var done) ? Schema(done.Content) : null;

    private static IOpenApiSchema? Schema(IDictionary<string, OpenApiMediaType>? content) =>
        content is not null && content.TryGetValue(Json, out var media) ? media.Schema : null;

    private static IReadOnlyList<ApiField> Fields(IOpenApiSchema? schema) => schema is null ? [] : [.. Below(schema, "", 0)];

    private static IEnumerable<ApiField> Below(IOpenApiSchema schema, string path, int depth)
    {
        if (depth > Deepest)
            yield break;
        if (schema.Items is { } items)
            foreach (var field in Below(items, path + "[]", depth + 1))
                yield return field;
        foreach (var (name, inner) in schema.Properties ?? new Dictionary<string, IOpenApiSchema>())
        {
            var whole = path is "" ? name : $"{path}.{name}";
            var one = Plain(inner);
            if (one.Properties is not { Count: > 0 } && one.Items is not { Properties.Count: > 0 })
                yield return new ApiField(whole, Kind(one), Range(one), schema.Required?.Contains(name) == true);
            foreach (var field in Below(one, whole, depth + 1))
                yield return field;
        }
    }

    /// <summary>The schema itself where it stands beside "or null".</summary>
    private static IOpenApiSchema Plain(IOpenApiSchema schema) => schema.OneOf?.FirstOrDefault(one => one.Type != JsonSchemaType.Null) ?? schema;

    private static string Kind(IOpenApiSchema schema) =>
        schema.Enum is { Count: > 0 } choices ? string.Join(" | ", choices.Where(choice => choice is not null).Select(choice => choice.ToString()))
        : ((schema.Type ?? JsonSchemaType.Object) & ~JsonSchemaType.Null) switch
        {
            JsonSchemaType.Array => "list",
            JsonSchemaType.Boolean => "true or false",
            JsonSchemaType.String => "text",
            JsonSchemaType.Object => "object",
            _ => "number",
        };

    private static string Range(IOpenApiSchema schema) => schema.Minimum is { } least && schema.Maximum is { } most ? $"{least} to {most}"
        : schema.MaxLength is { } longest ? $"at most {longest} characters"
        : "";
}
