package dev.filial.cli.page;

/** How pages look: one style sheet, in which nothing needs an escape. */
final class PageStyle {

  /** Between the rows of a table, where nothing hangs on seeing it. */
  private static final String RULE = "#d6d3ca";

  private static final String DARK_RULE = "#3d4145";

  private PageStyle() {}

  /** For all pages. */
  static String sheet() {
    return """

        *{box-sizing:border-box}
        body{margin:0 auto;max-width:62rem;padding:1.5rem 1.25rem 3rem;line-height:1.5;
          font-family:system-ui,-apple-system,"Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif}
        h1{font-size:1.9rem;font-weight:400;line-height:1.2;margin:0;overflow-wrap:anywhere}
        h2{font-size:1.15rem;font-weight:600;margin:2.25rem 0 .75rem;padding-bottom:.25rem;
          border-bottom:1px solid}
        h3{font-size:1rem;margin:1.25rem 0 .25rem}
        .code{font-weight:700;white-space:nowrap}
        .whole{white-space:nowrap}
        .lead{margin:.35rem 0 0}
        dl{display:grid;grid-template-columns:minmax(8rem,max-content) 1fr;gap:.3rem 1.25rem;
          margin:0}
        dd{margin:0;overflow-wrap:anywhere}
        table{border-collapse:collapse;width:100%}
        .said{margin:0 0 .5rem}
        th,td{text-align:left;vertical-align:top;padding:.35rem 1rem .35rem 0;border-bottom:1px solid}
        th.number,td.number{text-align:right}
        th.number,td.number{padding-right:1.5rem}
        th.number:last-child,td.number:last-child{padding-right:0}
        thead th{vertical-align:bottom}
        tbody th{font-weight:400}
        td.number,td.day{white-space:nowrap;font-variant-numeric:tabular-nums}
        td bdi:only-child{display:inline-block;max-width:40rem;overflow-wrap:break-word}
        .list{font-size:.9rem}.list td bdi:only-child{max-width:16rem}
        .list th,.list td{padding-right:.8rem}
        td.words{min-width:12rem}
        .wide{overflow-x:auto;max-width:100%}
        .bar{display:block;margin-top:.2rem}
        .bar path,.bar .ground{fill:none}
        figure{margin:0}
        figcaption{margin-top:.5rem}
        .drawing svg{display:block}
        ul{margin:0;padding-left:1.1rem}
        li{margin:.2rem 0}
        .photos{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:1rem}
        .photos li{max-width:25rem;margin:0;overflow-wrap:anywhere}
        .photos img{display:block;max-width:100%;height:auto;margin-bottom:.25rem}
        a{color:inherit}
        .fp a .fp-code{text-decoration:underline}
        footer{margin-top:2.5rem}
        .finder{display:flex;flex-wrap:wrap;gap:.75rem 1.25rem;align-items:end;margin:1rem 0 .5rem}
        .finder div:first-child{flex:1 1 16rem;max-width:26rem}
        .finder p{flex-basis:100%;margin:0}
        input,select{display:block;width:100%;margin:.25rem 0 0;padding:.45rem .6rem;
          font:inherit;color:inherit;background:transparent;border:1px solid;border-radius:4px}
        thead button{padding:.2rem 0;min-height:1.75rem;font:inherit;font-weight:600;color:inherit;text-align:left;
          background:none;border:0;cursor:pointer;text-decoration:underline dotted;
          text-underline-offset:.25em}
        thead .number button{text-align:right}
        #more{margin:1rem 0;padding:.45rem .9rem;font:inherit;color:inherit;background:transparent;
          border:1px solid;border-radius:4px;cursor:pointer}
        :focus-visible{outline:2px solid;outline-offset:2px}
        .wide:focus-visible,.wide :focus-visible{outline-offset:-2px}
        [aria-sort=ascending] button::after{content:" \\25B2"}
        [aria-sort=descending] button::after{content:" \\25BC"}
        .rest{display:none}
        .sheet{margin:1rem 0;font:10pt/12pt "DejaVu Sans Mono","Courier New",Courier,monospace}
        [hidden]{display:none!important}
        .strip,.curve{display:block;max-width:100%;height:auto}
        .curve{width:34rem}
        .strip text,.curve text{font-size:12px}
        .strip .mark{font-size:9.5px;font-weight:700;text-anchor:middle}
        .strip .under{text-anchor:middle}
        .curve .name{font-weight:700}
        .curve path{fill:none}
        .curve .under{stroke-width:4;stroke-linejoin:round}
        .curve .step{stroke-width:1.4}
        .expected{margin:.75rem 0 1rem}
        .swatch{vertical-align:-1px}
        .bar .open{fill:none;stroke-dasharray:3 2}
        h4{font-size:1rem;font-weight:400;margin:1rem 0 .25rem}
        .board td,.board thead th{white-space:nowrap}
        .board{width:auto}
        .board td,.board th{padding-right:2rem}
        .seasons{font-size:.85rem}.seasons th,.seasons td{padding-right:.8rem}
        h3+p,h4+p{margin-top:.25rem}
        .wide+dl,.wide+p{margin-top:.75rem}
        @media (max-width:34rem){dl{grid-template-columns:1fr;gap:0}dd{margin-bottom:.5rem}
          h1{font-size:1.5rem}td.number{white-space:normal}
          th,td,th.number,td.number{padding-right:.6rem}td bdi:only-child{max-width:18rem}
          .curve text{font-size:14px}.bar{width:4.5rem}.bar *{vector-effect:non-scaling-stroke}td.counts{min-width:22rem}}
        """
        + colours(Ink.PAPER, Ink.TEXT, Ink.SOFT, Ink.STROKE, RULE)
        + "@media screen and (prefers-color-scheme:dark){\n"
        + colours(Ink.DARK_PAPER, Ink.DARK_TEXT, Ink.DARK_SOFT, Ink.DARK_STROKE, DARK_RULE)
        + "}\n"
        + """
        @page{margin:15mm}
        @media print{body{max-width:none;padding:0;font-size:10pt}.wide{overflow:visible}
          .drawing svg{max-width:100%;height:auto}h2,h3{break-after:avoid}.screen,.finder,#more{display:none}
          thead button{display:contents}thead button::after{content:none!important}
          .sheet{margin:0}.paper+.paper{break-before:page}
          h4,.above{break-after:avoid}tr,li,figure,.board{break-inside:avoid}thead{display:table-header-group}}
        """;
  }

  private static String colours(
      String paper, String text, String soft, String stroke, String rule) {
    return """
        body{background:%s;color:%s}
        dt,.said,figcaption,footer,.lead,thead th,label{color:%s}
        h2,thead th{border-color:%s}
        tbody th,td{border-color:%s}
        select option{background:%s}
        .bar .ground,.bar .range,.edge,.curve .axis,.curve .step{stroke:%s}
        .strip .heart{fill:%s}.strip text,.curve .name{fill:%s}.curve .label{fill:%s}
        .curve .grid{stroke:%s;stroke-opacity:.35}
        """
        .formatted(paper, text, soft, soft, rule, paper, stroke, paper, text, soft, soft);
  }
}
