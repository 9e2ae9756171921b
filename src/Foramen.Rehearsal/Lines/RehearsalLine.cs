using System.Text.Json.Serialization;

namespace Foramen.Rehearsal.Lines;

/// <summary>One JSON line between photographer and world; <c>type</c> comes first and says which.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "type")]
[JsonDerivedType(typeof(BeginLine), "begin")]
[JsonDerivedType(typeof(SheetLine), "sheet")]
[JsonDerivedType(typeof(ExposeLine), "expose")]
[JsonDerivedType(typeof(JudgedLine), "judged")]
[JsonDerivedType(typeof(EndLine), "end")]
public abstract record RehearsalLine;
