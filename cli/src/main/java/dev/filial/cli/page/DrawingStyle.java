package dev.filial.cli.page;

/** How a drawing looks: its style sheet, on light and on dark. */
final class DrawingStyle {

  private static final String FONTS =
      "system-ui,-apple-system,'Segoe UI',Roboto,'Helvetica Neue',Arial,'DejaVu Sans',sans-serif";

  private DrawingStyle() {}

  /** For every drawing. */
  static String sheet() {
    return """

        .fp text{font-family:%s;unicode-bidi:isolate}
        .fp path,.fp-none,.fp-asked,.fp-inner{fill:none}
        .fp-code{font-size:13px;font-weight:700}
        .fp-name{font-size:11px}
        .fp-word{font-size:11px}
        .fp-taxon{font-style:italic}
        .fp-label{font-size:10.5px}
        .fp-head{font-size:17px;font-weight:700}
        .fp-box{stroke-width:1}
        .fp-unnumbered{stroke-dasharray:3 3}
        .fp-asked{stroke-width:2.5}
        .fp-part{stroke:%s;stroke-width:.8}
        .fp-seed,.fp-pollen,.fp-copy,.fp-doubt{stroke-width:1.6;stroke-linejoin:round}
        .fp-pollen{stroke-dasharray:7 4}
        .fp-doubt{stroke-dasharray:.1 4.5;stroke-linecap:round;stroke-width:2}
        .fp-copy{stroke-dasharray:14 3 3 3;stroke-width:2.2}
        .fp-self{stroke-width:5}
        .fp-self-in{stroke-width:2.2}
        """
            .formatted(FONTS, Palette.EDGE)
        + colours(Ink.PAPER, Ink.BOX, Ink.TEXT, Ink.SOFT, Ink.STROKE)
        + "@media screen and (prefers-color-scheme:dark){\n"
        + colours(Ink.DARK_PAPER, Ink.DARK_BOX, Ink.DARK_TEXT, Ink.DARK_SOFT, Ink.DARK_STROKE)
        + "}\n";
  }

  private static String colours(String paper, String box, String text, String soft, String stroke) {
    return """
        .fp-paper{fill:%s}
        .fp-box{fill:%s;stroke:%s}
        .fp-code,.fp-name,.fp-head{fill:%s}
        .fp-word,.fp-label{fill:%s}
        .fp-seed,.fp-pollen,.fp-self,.fp-copy,.fp-doubt,.fp-none,.fp-asked,.fp-inner{stroke:%s}
        .fp-self-in{stroke:%s}
        """
        .formatted(paper, box, stroke, text, soft, stroke, paper);
  }
}
