namespace Foramen.TestKit;

/// <summary>A test among published values that checks a rule of our own, such as what is refused; it stands in no source.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class OwnRuleAttribute : Attribute;
