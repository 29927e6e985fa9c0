global using SourcePlace = PolarityMap.Core.Plants.SourcePlace;
