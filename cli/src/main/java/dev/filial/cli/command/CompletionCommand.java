package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.ShellCompletion;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import java.util.Map;
import java.util.function.Supplier;

/** {@code filial completion}. */
public final class CompletionCommand implements BenchCommand {

  /** The shells that a script can be made for. */
  enum Shell {
    BASH,
    ZSH
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

  private final Supplier<Map<String, Words>> verbs;
  private final Supplier<Shell> shell;

  /** Declares its words; {@code verbs} gives those of every verb. */
  public CompletionCommand(Words words, Supplier<Map<String, Words>> verbs) {
    this.verbs = verbs;
    shell = words.argument("SHELL", "bash or zsh", Reading.oneOf(Shell.class));
    words
        .describe(
            "The script goes where the shell looks for such scripts (bash), or into a file that"
                + " ~/.zshrc reads with: source ~/.filial-completion (zsh).")
        .describe("Make it anew when Filial has learnt new verbs.")
        .example("filial completion bash > ~/.local/share/bash-completion/completions/filial")
        .example("filial completion zsh > ~/.filial-completion");
  }

  @Override
  public Answer run(Bench bench) {
    return new Script(shell.get(), ShellCompletion.script(verbs.get()));
  }
}
