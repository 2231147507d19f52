// benchmarks
System.Console.WriteLine();
