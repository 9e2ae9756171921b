namespace Foramen.Engine.Scene;

/// <summary>Where a tone's luminance comes from: a place in the photograph, or a hand meter.</summary>
public abstract record ToneSource
{
    private protected ToneSource()
    {
    }
}
