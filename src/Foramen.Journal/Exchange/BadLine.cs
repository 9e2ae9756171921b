namespace Foramen.Journal.Exchange;

/// <summary>A line of a journal file that could not be taken in.</summary>
/// <param name="Number">Which line, from 1.</param>
/// <param name="Sentence">What is wrong with it, for the user.</param>
public sealed record BadLine(int Number, string Sentence);
