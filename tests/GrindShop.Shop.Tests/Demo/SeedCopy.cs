using GrindShop.Shop.Demo;

namespace GrindShop.Shop.Tests.Demo;

/// <summary>A copy of the demo scenario's files to spoil.</summary>
internal sealed class SeedCopy : IDisposable
{
    public SeedCopy()
    {
        foreach (var file in Directory.GetFiles(SeedFiles.Folder))
            File.Copy(file, System.IO.Path.Combine(Path, System.IO.Path.GetFileName(file)));
    }

    public string Path { get; } = Directory.CreateTempSubdirectory("grindshop-seed-").FullName;

    /// <summary>Exchanges the first place where the text stands.</summary>
    public void Replace(string file, string good, string bad)
    {
        var path = System.IO.Path.Combine(Path, file);
        var text = File.ReadAllText(path);
        var at = text.IndexOf(good, StringComparison.Ordinal);
        Assert.True(at >= 0, $"\"{good}\" is not in {file}.");
        File.WriteAllText(path, text[..at] + bad + text[(at + good.Length)..]);
    }

    public void KeepLines(string file, int count)
    {
        var path = System.IO.Path.Combine(Path, file);
        File.WriteAllLines(path, File.ReadLines(path).Take(count).ToList());
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
