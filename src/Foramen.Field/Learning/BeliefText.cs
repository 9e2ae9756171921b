using Foramen.Engine.Learning;
using Foramen.Field.Texts;
using Foramen.Journal;
using Foramen.Journal.Fold;

namespace Foramen.Field.Learning;

/// <summary>Beliefs by the names of the user's own gear.</summary>
internal static class BeliefText
{
    /// <summary>What a belief is about, in words.</summary>
    public static string Name(Ledger ledger, BeliefKey key) => Words.Learned.Name(key.Kind, Ulid.TryParse(key.Of, out var id)
        ? (key.Kind == BeliefKind.Camera ? ledger.Cameras.Find(id)?.Current.Body.Name : ledger.Papers.Find(id)?.Current.Body.Name) ?? key.Of
        : key.Of);
}
