namespace Foramen.Engine.Light;

/// <summary>What light falls on in an incident meter.</summary>
public enum IncidentReceptor
{
    /// <summary>A flat disc, which weighs light by the cosine of its angle.</summary>
    Flat,

    /// <summary>A dome, which takes light from in front and from the sides alike.</summary>
    Dome,
}
