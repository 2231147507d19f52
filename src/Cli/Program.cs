System.Console.WriteLine("tangwright");
