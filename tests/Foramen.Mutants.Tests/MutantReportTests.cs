namespace Foramen.Mutants.Tests;

public class MutantReportTests
{
    private const string Json = """
        {"schemaVersion":"2","files":{"src/A.cs":{"language":"cs","mutants":[
          {"id":"4","mutatorName":"Arithmetic mutation","replacement":"a -\n b","location":{"start":{"line":12,"column":3},"end":{"line":13,"column":3}},"status":"NoCoverage"},
          {"id":"5","mutatorName":"Block removal mutation","replacement":"{}","location":{"start":{"line":14,"column":3},"end":{"line":15,"column":3}},"status":"CompileError"}]}}}
        """;

    [Fact]
    public void A_status_is_written_and_the_rest_kept()
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, Json);
            var report = MutantReport.Read(path);
            Assert.Equal([MutantStatus.NoCoverage, null], report.Mutants.Select(mutant => mutant.Status));
            Assert.Equal(("src/A.cs", 4, 12, "Arithmetic mutation: a -  b"), (report.Mutants[0].File, report.Mutants[0].Id, report.Mutants[0].Line, report.Mutants[0].Becomes));
            report.Note(report.Mutants[0], MutantStatus.Killed);
            report.Write();
            Assert.Equal([MutantStatus.Killed, null], MutantReport.Read(path).Mutants.Select(mutant => mutant.Status));
            Assert.Contains("\"CompileError\"", File.ReadAllText(path), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
