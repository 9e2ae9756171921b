Console.WriteLine("foramen");
