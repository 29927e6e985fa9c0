using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Checks.Remarks;

/// <summary>
/// Links that fit by the losses that their parts state and would not by the standard's largest losses: they stand on the
/// makers' word. One remark for each application.
/// </summary>
internal static class LossByStandard
{
    public static void Add(CheckContext context, List<Remark> remarks)
    {
        if (!context.Losses.HasApplications)
            return;
        var byApplication = new Dictionary<Application, List<LinkBudget>>();
        foreach (LinkBudget link in context.Losses.Links)
        {
            if (!link.FailsByStandard || link.Worst.Application is not { } application)
                continue;
            if (!byApplication.TryGetValue(application, out List<LinkBudget>? links))
                byApplication[application] = links = [];
            links.Add(link);
        }

        foreach ((Application application, List<LinkBudget> links) in byApplication)
        {
            StrandBudget worst = links[0].Worst;
            foreach (LinkBudget link in links)
            {
                if (link.Worst.Standard.Total > worst.Standard.Total)
                    worst = link.Worst;
            }

            string who = links.Count == 1 ? $"the link from {context.Plant.Address(links[0].From)}" : $"{links.Count} links";
            remarks.Add(new Remark(
                $"{who} of {application} {(links.Count == 1 ? "fits" : "fit")} by what the parts state and {(links.Count == 1 ? "fails" : "fail")} by the standard's maxima: "
                + $"at worst {worst.Stated.Total} stated, {worst.Standard.Total} by {context.Losses.Limits.Name}, limit {worst.LossLimit}",
                links[0].Link >= 0 ? context.Plant.Links[links[0].Link].Place : context.PlaceOf(worst.Strand)));
        }
    }
}
