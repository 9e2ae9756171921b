namespace Foramen.Engine.Bath;

/// <summary>Something that happened to a bottle of developer. A bottle is a fold over these, in the order they happened.</summary>
public abstract record BottleEvent
{
    private protected BottleEvent()
    {
    }
}
