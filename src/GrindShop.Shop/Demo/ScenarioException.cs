namespace GrindShop.Shop.Demo;

/// <summary>The scenario's files cannot be loaded; the message names every bad row, one a line.</summary>
public sealed class ScenarioException(string message) : Exception(message);
