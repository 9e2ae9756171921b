using Foramen.Cli;

return await Prompt.RunAsync(args, Console.Out, Console.Error);
