/**
 * The bench's verbs on a command line: what is typed is read, the library is asked, the answer is
 * laid out. No genetics, no rules of the register and no SQL live here.
 *
 * <p>The packages stand on floors, each importing only what is below it: {@code screen}, {@code
 * demo}, {@code wording} and {@code paper}; {@code label} and {@code page}; {@code frame}; {@code
 * command}; and on top the entry class with its table of verbs.
 */
@org.jspecify.annotations.NullMarked
module dev.filial.cli {
  requires static org.jspecify;
  requires dev.filial.core;
  requires com.google.zxing;
  requires java.desktop;
  requires net.coobird.thumbnailator;
  requires info.picocli;
  requires org.jline.reader;
  requires org.jline.terminal;
  requires tools.jackson.databind;
  requires org.xerial.sqlitejdbc;
  requires org.eclipse.elk.alg.layered;
  requires org.eclipse.elk.core;
  requires org.eclipse.elk.graph;
  requires org.eclipse.emf.common;
  requires org.eclipse.emf.ecore;

  // Jackson reads the records that are printed as JSON.
  opens dev.filial.cli to
      tools.jackson.databind;
  opens dev.filial.cli.command to
      tools.jackson.databind;
  opens dev.filial.cli.frame to
      tools.jackson.databind;
  opens dev.filial.cli.label to
      tools.jackson.databind;
}
