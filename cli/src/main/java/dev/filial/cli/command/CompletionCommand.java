package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.screen.Screen;
import java.util.Locale;
import java.util.function.Supplier;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code filial completion}. */
@Command(
    description = {
      "The script goes where the shell looks for such scripts (bash), or into a file that ~/.zshrc"
          + " reads with: source ~/.filial-completion (zsh).",
      "Make it anew when Filial has learnt new verbs."
    },
    footer = {
      "filial completion bash > ~/.local/share/bash-completion/completions/filial",
      "filial completion zsh > ~/.filial-completion"
    })
public final class CompletionCommand implements BenchCommand {

  /** The shells that a script can be made for. */
  enum Shell {
    BASH,
    ZSH;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A completion script.
   *
   * @param shell the shell it is for
   * @param script the whole of it
   */
  record Script(Shell shell, String script) implements Answer {
    @Override
    public void show(Screen screen) {
      screen.raw(script);
    }
  }

  private final Supplier<CommandLine> everyVerb;

  @Parameters(paramLabel = "SHELL", description = "bash or zsh")
  private Shell shell;

  /** Makes a script from the whole command line. */
  public CompletionCommand(Supplier<CommandLine> everyVerb) {
    this.everyVerb = everyVerb;
  }

  @Override
  public Answer run(Bench bench) {
    String script = AutoComplete.bash("filial", everyVerb.get());
    return new Script(shell, script);
  }
}
