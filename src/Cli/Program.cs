using Tangwright.Cli;

return CommandLine.Run(args);
