using System.CommandLine;
using CastBook.Cli.Watching;
using CastBook.Cli.Words;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace CastBook.Cli;

/// <summary><c>castbook watch FOLDER…</c>: fills each workbook that is put or saved there.</summary>
internal static class WatchCommand
{
    private const int UsualSeconds = 5;

    private static readonly TimeSpan LongestFill = TimeSpan.FromMinutes(5);

    /// <summary>The command.</summary>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where everything else goes.</param>
    /// <param name="clock">The clock.</param>
    public static Command Make(TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var folders = new Argument<string[]>("FOLDER") { Description = WatchWords.Folders, Arity = ArgumentArity.OneOrMore };
        var subFolders = new Option<bool>("--sub-folders") { Description = WatchWords.SubFolders };
        var once = new Option<bool>("--once") { Description = WatchWords.Once };
        var polling = new Option<bool>("--polling") { Description = WatchWords.Polling };
        var every = new Option<int>("--every") { Description = WatchWords.Every, HelpName = "SECONDS", DefaultValueFactory = _ => UsualSeconds };
        var command = new Command("watch", WatchWords.Command)
        {
            folders, subFolders, once, polling, every,
        };
        command.SetAction((parsed, stop) => RunAsync(
            parsed.GetValue(folders)!, parsed.GetValue(subFolders), parsed.GetValue(once), parsed.GetValue(polling), parsed.GetValue(every), output, errors, clock, stop));
        return command;
    }

    private static async Task<int> RunAsync(
        string[] paths, bool subFolders, bool once, bool polling, int everySeconds, TextWriter output, TextWriter errors, TimeProvider clock, CancellationToken stop)
    {
        if (Array.Find(paths, p => !Directory.Exists(p)) is { } missing)
        {
            await errors.WriteLineAsync(ProgramWords.Complaint(SharedWords.NoFolder(missing))).ConfigureAwait(false);
            return ExitCode.Usage;
        }

        if (everySeconds is < 1 or > 3600)
        {
            await errors.WriteLineAsync(ProgramWords.Complaint(WatchWords.EveryOutOfRange)).ConfigureAwait(false);
            return ExitCode.Usage;
        }

        var folders = paths.Select(p => (Path: Path.GetFullPath(p), Folder: new WatchedFolder(p, subFolders, output, clock))).ToList();
        var loop = new WatchLoop(folders, TimeSpan.FromSeconds(everySeconds), polling, clock);
        if (once)
        {
            await loop.RunOnceAsync(stop).ConfigureAwait(false);
            return ExitCode.Filled;
        }

        // The host ends it on Ctrl+C, on SIGTERM and by word of systemd or of the Windows service manager.
        var host = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings());
        host.Services.AddSystemd().AddWindowsService(service => service.ServiceName = "CastBook");
        host.Services.Configure<HostOptions>(o => o.ShutdownTimeout = LongestFill);
        host.Services.AddHostedService(_ => new WatchService(loop, folders.ConvertAll(f => f.Folder), everySeconds));
        using var built = host.Build();
        await built.RunAsync(stop).ConfigureAwait(false);
        return ExitCode.Filled;
    }

    private sealed class WatchService(WatchLoop loop, List<WatchedFolder> folders, int everySeconds) : BackgroundService
    {
        protected override async Task ExecuteAsync(CancellationToken stoppingToken)
        {
            folders.ForEach(f => f.Say(WatchWords.Begins(everySeconds)));
            await Task.Run(() => loop.RunAsync(stoppingToken), CancellationToken.None).ConfigureAwait(false);
            folders.ForEach(f => f.Say(WatchWords.Ends));
        }
    }
}
