namespace Foramen.Engine.Scene;

/// <summary>How what a region of the photograph shows moves.</summary>
public abstract record RegionMotion
{
    private protected RegionMotion()
    {
    }
}
