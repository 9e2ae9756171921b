namespace Foramen.Engine.Paper;

/// <summary>What an eye can say of a strip without instruments.</summary>
public enum EyeReadingKind
{
    /// <summary>The first patch, from the least exposed, that differs visibly from unexposed paper.</summary>
    FirstTone,

    /// <summary>The last patch that can still be told from the one after it.</summary>
    LastTone,

    /// <summary>The patch that best matches a grey of known density.</summary>
    Match,
}
