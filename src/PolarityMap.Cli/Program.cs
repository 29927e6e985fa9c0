using PolarityMap.Cli;

return Application.Run(args, CommandContext.OfProcess());
