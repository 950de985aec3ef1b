package rigspeak.grammar;

import edu.cmu.sphinx.jsgf.JSGFGrammarParseException;
import edu.cmu.sphinx.jsgf.JSGFRuleGrammar;
import edu.cmu.sphinx.jsgf.JSGFRuleGrammarFactory;
import edu.cmu.sphinx.jsgf.JSGFRuleGrammarManager;
import edu.cmu.sphinx.jsgf.parser.JSGFParser;
import edu.cmu.sphinx.jsgf.parser.TokenMgrError;
import edu.cmu.sphinx.jsgf.rule.JSGFRule;
import edu.cmu.sphinx.jsgf.rule.JSGFRuleAlternatives;
import edu.cmu.sphinx.jsgf.rule.JSGFRuleCount;
import edu.cmu.sphinx.jsgf.rule.JSGFRuleName;
import edu.cmu.sphinx.jsgf.rule.JSGFRuleSequence;
import edu.cmu.sphinx.jsgf.rule.JSGFRuleTag;
import edu.cmu.sphinx.jsgf.rule.JSGFRuleToken;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The text of a JSGF file, turned into phrases by means of Sphinx4's own parser. */
final class GrammarText {
  private static final int LONGEST_FILE = 200_000;
  private static final int DEEPEST_NEST = 40;
  private static final int MOST_RULES = 1_000;
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?(?:\\*/|\\z)|//[^\\n]*");
  private static final Pattern DEFINED = Pattern.compile("(<[^<>\\s]*+>)\\s*+=");

  private final String name;

  /** Without remarks, which leave their line ends. */
  private final String plain;

  /**
   * @param name what a fault calls it
   */
  GrammarText(String name, String text) {
    this.name = name;
    if (text.length() > LONGEST_FILE) {
      throw new GrammarFault(
          "The grammar " + name + " is longer than " + LONGEST_FILE + " characters.", null);
    }
    if (text.lastIndexOf("/*") > text.lastIndexOf("*/")) {
      throw new GrammarFault("The grammar " + name + " has a remark that is not closed.", null);
    }
    this.plain =
        COMMENT.matcher(text).replaceAll(remark -> remark.group().replaceAll("[^\n]", " "));
    refuseDeepNests();
  }

  /** Every rule by its name, in the order of the file. */
  Map<String, Phrase> rules() {
    try {
      JSGFRuleGrammar parsed =
          JSGFParser.newGrammarFromJSGF(
              new StringReader(plain), new JSGFRuleGrammarFactory(new JSGFRuleGrammarManager()));
      if (parsed.getRuleNames().size() > MOST_RULES) {
        throw new GrammarFault(
            "The grammar " + name + " has more than " + MOST_RULES + " rules.", null);
      }
      Map<String, Phrase> rules = new LinkedHashMap<>();
      for (String rule : parsed.getRuleNames()) {
        rules.put(rule, phrase(parsed.getRule(rule)));
      }
      return rules;
    } catch (JSGFGrammarParseException e) {
      throw new GrammarFault(
          "The grammar " + name + " has a mistake in line " + e.lineNumber + ".", e);
    } catch (TokenMgrError e) {
      String what = e.getMessage().lines().findFirst().orElse("").replaceAll("[.\\s]+$", "");
      throw new GrammarFault(
          "The grammar " + name + " has a piece that is no grammar: " + what + ".", e);
    }
  }

  /** Refuses a rule that is written down a second time: the parser would keep one of them. */
  void refuseTwins() {
    Map<String, Integer> lines = new LinkedHashMap<>();
    Matcher rule = DEFINED.matcher(plain);
    while (rule.find()) {
      Integer before = lines.put(rule.group(1), lineAt(rule.start()));
      if (before != null) {
        throw faultIn(
            lineAt(rule.start()),
            "defines the rule " + rule.group(1) + ", which line " + before + " defines too");
      }
    }
  }

  /** Of the line that first has this piece; of a rule, that defines it. */
  GrammarFault fault(String near, String reason) {
    Matcher defined = Pattern.compile(Pattern.quote(near) + "\\s*+=").matcher(plain);
    Matcher there =
        Pattern.compile("(?<![\\w'])" + Pattern.quote(near) + "(?![\\w'])").matcher(plain);
    int at = defined.find() ? defined.start() : there.find() ? there.start() : 0;
    return faultIn(lineAt(at), reason);
  }

  private GrammarFault faultIn(int line, String reason) {
    return new GrammarFault("The grammar " + name + ", line " + line + ", " + reason + ".", null);
  }

  private int lineAt(int place) {
    return (int) plain.substring(0, place).chars().filter(c -> c == '\n').count() + 1;
  }

  private void refuseDeepNests() {
    int depth = 0;
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (c == '(' || c == '[') {
        depth++;
      } else if (c == ')' || c == ']' || c == ';') {
        depth = c == ';' ? 0 : depth - 1;
      }
      if (depth > DEEPEST_NEST) {
        throw faultIn(lineAt(i), "has more than " + DEEPEST_NEST + " brackets in one another");
      }
    }
  }

  private GrammarFault notTaken(Object rule) {
    return new GrammarFault(
        "The grammar " + name + " uses something that is not taken here: " + rule + ".", null);
  }

  private Phrase phrase(JSGFRule rule) {
    if (rule instanceof JSGFRuleToken token) {
      return new Phrase.Word(token.getText());
    }
    if (rule instanceof JSGFRuleName name) {
      return name.getRuleName().equals("NULL")
          ? new Phrase.Nothing()
          : new Phrase.Rule(name.getRuleName());
    }
    if (rule instanceof JSGFRuleTag tagged) {
      return new Phrase.Tagged(phrase(tagged.getRule()), tagged.getTag().strip());
    }
    if (rule instanceof JSGFRuleSequence sequence) {
      return only(phrases(sequence.getRules()), Phrase.Sequence::new);
    }
    if (rule instanceof JSGFRuleAlternatives alternatives) {
      return only(phrases(alternatives.getRules()), Phrase.Choice::new);
    }
    if (rule instanceof JSGFRuleCount count) {
      Phrase part = phrase(count.getRule());
      return switch (count.getCount()) {
        case JSGFRuleCount.OPTIONAL -> new Phrase.Maybe(part);
        case JSGFRuleCount.ONCE_OR_MORE -> new Phrase.OnceOrMore(part);
        default -> new Phrase.Maybe(new Phrase.OnceOrMore(part));
      };
    }
    throw notTaken(rule);
  }

  private List<Phrase> phrases(List<JSGFRule> rules) {
    return rules.stream().map(this::phrase).toList();
  }

  private static Phrase only(List<Phrase> parts, Function<List<Phrase>, Phrase> several) {
    return parts.size() == 1 ? parts.get(0) : several.apply(parts);
  }
}
