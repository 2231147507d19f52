using Tangwright.Desk;

return await DeskProgram.Run(args);
