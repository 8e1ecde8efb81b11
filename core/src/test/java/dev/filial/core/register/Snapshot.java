package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * All that a register answers about the subjects it ever spoke of, to be compared.
 *
 * @param answers each question with its answer
 */
record Snapshot(Map<String, Object> answers) {

  static Snapshot of(RegisterView view, Set<Subject> subjects) {
    Map<String, Object> answers = new LinkedHashMap<>();
    answers.put("size", view.size());
    for (long n = 1; n <= view.size() + 1; n++) {
      answers.put("entry " + n, view.entry(n));
      answers.put("effective " + n, view.effective(n));
    }
    for (Subject subject : subjects) {
      answers.put("on " + subject, view.entriesOn(subject));
      answers.put("mentioning " + subject, view.entriesMentioning(subject));
      switch (subject.kind()) {
        case CODE -> ask(view, Code.parse(subject.key()), answers);
        case TAXON -> answers.put("taxon " + subject, view.taxon(subject.key()));
        case TRAIT -> answers.put("trait " + subject, view.trait(subject.key()));
        case LOCUS -> answers.put("locus " + subject, view.locus(subject.key()));
        case FIELD_NUMBER -> answers.put("population " + subject, view.population(subject.key()));
        case PLACE -> answers.put("around " + subject, Places.of(view).around(subject.key()));
        case ENTRY, INTERVAL, CAUTION -> {}
      }
    }
    view.items(EnumSet.of(Item.Kind.PLANT, Item.Kind.SEEDLING))
        .forEach(
            item ->
                answers.put("pollen " + item.code(), PollenStore.of(view, item.code()).batches()));
    answers.put("items", view.items(EnumSet.allOf(Item.Kind.class)));
    answers.put("taxa", view.taxa());
    for (Subject.Kind kind : Subject.Kind.values()) {
      answers.put("keys " + kind, view.keys(kind));
    }
    answers.put("traits", view.traits());
    answers.put("named", view.named("", 1000));
    answers.put("named k", view.named("K", 2));
    answers.put("beginning", view.codesBeginning("2", 7));
    answers.put("opening", view.opening());
    return new Snapshot(answers);
  }

  private static void ask(RegisterView view, Code code, Map<String, Object> answers) {
    answers.put("taken " + code, view.taken(code));
    answers.put("under " + code.whole(), view.codesUnder(code.whole()));
    answers.put("year " + code.year(), view.lastNumber(code.year()));
    answers.put("lineage " + code, List.copyOf(view.lineage(List.of(code)).values()));
    for (Item.Kind kind : Item.Kind.values()) {
      answers.put("last " + kind + " of " + code.whole(), view.lastSuffix(code.whole(), kind));
    }
  }

  /** The subjects that any entry, amended or not, ever spoke of. */
  static Set<Subject> subjects(RegisterView view) {
    Set<Subject> subjects = new TreeSet<>(java.util.Comparator.comparing(Subject::toString));
    for (long n = 1; n <= view.size(); n++) {
      subjects.add(Subject.entry(n));
      view.entry(n).map(Entry::statement).ifPresent(said -> addAll(subjects, said));
      view.effective(n).ifPresent(said -> addAll(subjects, said));
    }
    return subjects;
  }

  private static void addAll(Set<Subject> subjects, Statement statement) {
    subjects.addAll(statement.subjects());
    subjects.addAll(statement.mentions());
    if (statement instanceof Amended amended) {
      Optional.ofNullable(amended.replacement()).ifPresent(said -> addAll(subjects, said));
    }
  }
}
