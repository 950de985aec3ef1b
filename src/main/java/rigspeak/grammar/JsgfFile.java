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
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns a JSGF file into phrases by means of Sphinx4's own parser. */
final class JsgfFile {
  private JsgfFile() {}

  /** Reads every rule of the file by its name, in the order of the file. */
  static Map<String, Phrase> rules(URL file) {
    try (Reader in = new InputStreamReader(file.openStream(), StandardCharsets.UTF_8)) {
      JSGFRuleGrammar parsed =
          JSGFParser.newGrammarFromJSGF(
              in, new JSGFRuleGrammarFactory(new JSGFRuleGrammarManager()));
      Map<String, Phrase> rules = new LinkedHashMap<>();
      for (String name : parsed.getRuleNames()) {
        rules.put(name, phrase(parsed.getRule(name)));
      }
      return rules;
    } catch (IOException e) {
      throw new GrammarFault("The grammar " + file + " cannot be opened.", e);
    } catch (JSGFGrammarParseException e) {
      throw new GrammarFault(
          "The grammar " + file + " has a mistake in line " + e.lineNumber + ".", e);
    } catch (TokenMgrError e) {
      throw new GrammarFault(
          "The grammar " + file + " has a piece that is no grammar: " + firstLine(e) + ".", e);
    }
  }

  private static String firstLine(TokenMgrError e) {
    return e.getMessage().lines().findFirst().orElse("");
  }

  private static Phrase phrase(JSGFRule rule) {
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
    throw new GrammarFault("The grammar uses something that is not taken here: " + rule, null);
  }

  private static List<Phrase> phrases(List<JSGFRule> rules) {
    return rules.stream().map(JsgfFile::phrase).toList();
  }

  private static Phrase only(
      List<Phrase> parts, java.util.function.Function<List<Phrase>, Phrase> several) {
    return parts.size() == 1 ? parts.get(0) : several.apply(parts);
  }
}
