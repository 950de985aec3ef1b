package rigspeak.drawing;

import java.util.List;
import java.util.stream.Collectors;

/** Sheets one below the other in a page that needs nothing else. */
public final class Html {
  private static final String STYLE =
      "body{margin:0;background:#fff}"
          + "svg{display:block;max-width:100%;height:auto;margin:0 auto}"
          + "@media print{svg{break-after:page}}";

  private Html() {}

  /**
   * @param title of the page; it comes out as text, whatever stands in it
   */
  public static String of(String title, List<Picture> sheets) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width\">\n<title>"
        + Svg.escaped(title)
        + "</title>\n<style>"
        + STYLE
        + "</style>\n</head>\n<body>\n<main>\n"
        + sheets.stream().map(Picture::svg).collect(Collectors.joining())
        + "</main>\n</body>\n</html>\n";
  }
}
