namespace Foramen.Engine.Bath;

/// <summary>What to do with a bottle before the next sheet.</summary>
public enum BottleAction
{
    /// <summary>Nothing.</summary>
    Use,

    /// <summary>Use it, with the longer time.</summary>
    Extend,

    /// <summary>Pour some away and add fresh developer.</summary>
    TopUp,

    /// <summary>Keep it for disposal and mix a fresh one.</summary>
    Replace,
}
