return await Foramen.Mutants.MutantTrial.Run(args);
