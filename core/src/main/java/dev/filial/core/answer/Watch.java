package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Item;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.trial.SurvivalCurve.Event;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The seedlings of one sowing as they were watched: when they were counted up, found dead or
 * missing, and last seen, in days from the sowing.
 *
 * <p>Between two counts of what stands there, whoever is missing and did not leave by an entry has
 * died, dated to the count that shows it; whoever is there and was never counted up has come up. A
 * pot is followed to the last entry that shows how many live in it, a numbered seedling that is
 * still here to the last day of the register: it would else be lost from sight because it lives.
 *
 * <p>Who is entered as dead after a count that missed as many is not dead twice, if the next count
 * finds no more missing.
 */
final class Watch {

  /** Why something could not be followed. */
  enum Lost {
    /** The sowing has no day. */
    NO_DAY("the day of sowing is not known to the day"),
    /** Nobody counted, or only what came up. */
    NEVER_COUNTED("what is alive was never counted to the number, on a day that is known"),
    /** Some left and nobody knows when or how many. */
    LEFT_UNCOUNTED("not followed further: some left on a day or in a number not known"),
    /** Seedlings left the sowing, and its pots were counted: nobody knows out of which. */
    NOT_BY_POT("its pots were counted, but some left that are entered of the sowing as a whole"),
    /** A numbered seedling died, nobody knows when. */
    DIED_UNDATED("numbered seedlings not followed: they died or left on a day not known");

    private final String words;

    Lost(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  private final RegisterView view;
  private final @Nullable LocalDate from;
  private final LocalDate lastDay;
  private boolean takenAlive;
  private final List<Event> events = new ArrayList<>();
  private final Map<Lost, List<Code>> lost = new EnumMap<>(Lost.class);
  private final Set<Code> walked = new HashSet<>();

  private Watch(RegisterView view, @Nullable LocalDate from, LocalDate lastDay) {
    this.view = view;
    this.lastDay = lastDay;
    this.from = from;
  }

  /** The last day that any entry of the register speaks of; the earliest there is if none does. */
  static LocalDate lastDay(RegisterView view) {
    LocalDate last = LocalDate.MIN;
    for (long entry = 1; entry <= view.size(); entry++) {
      PartialDate date = view.effective(entry).map(Statement::date).orElse(null);
      if (date != null && date.day() != 0 && date.latest().isAfter(last)) {
        last = date.latest();
      }
    }
    return last;
  }

  /** Watches the seedlings of a sowing, the numbered ones that are here up to {@code lastDay}. */
  static Watch of(RegisterView view, Sown sown, LocalDate lastDay) {
    PartialDate date = sown.date();
    LocalDate from = date != null && date.day() != 0 ? date.earliest() : null;
    Watch watch = new Watch(view, from, lastDay);
    if (from == null) {
      watch.lose(Lost.NO_DAY, sown.sowing());
      return watch;
    }
    List<Code> pots = new ArrayList<>();
    sown.groups().forEach(filled -> pots.add(filled.group()));
    if (pots.stream().noneMatch(watch::isCounted)) {
      pots.clear();
      pots.add(sown.sowing());
    } else if (watch.isTakenFrom(sown.sowing())) {
      watch.lose(Lost.NOT_BY_POT, sown.sowing());
      return watch;
    }
    boolean any = false;
    for (Code pot : pots) {
      any |= watch.follow(pot, 0, 0);
    }
    if (!any && !watch.lost.containsKey(Lost.LEFT_UNCOUNTED)) {
      watch.lost.remove(Lost.NEVER_COUNTED);
      watch.lose(Lost.NEVER_COUNTED, sown.sowing());
    }
    return watch;
  }

  /** What happened, in no order. */
  List<Event> events() {
    return events;
  }

  /**
   * Whether numbered seedlings are taken to be alive on the last day because nothing else is said.
   */
  boolean isTakenAlive() {
    return takenAlive;
  }

  /** What could not be followed. */
  Map<Lost, List<Code>> lost() {
    return lost;
  }

  private void lose(Lost why, Code what) {
    lost.computeIfAbsent(why, any -> new ArrayList<>()).add(what);
  }

  private boolean isCounted(Code pot) {
    return view.entriesOn(Subject.of(pot)).stream()
        .anyMatch(entry -> view.effective(entry).orElse(null) instanceof Counted);
  }

  private boolean isTakenFrom(Code sowing) {
    return view.entriesOn(Subject.of(sowing)).stream()
        .anyMatch(entry -> leaves(view.effective(entry).orElseThrow(), sowing));
  }

  /** An entry about a pot, on a day from the sowing. */
  private record About(int day, Statement statement) {}

  private int day(PartialDate date) {
    return from == null ? 0 : (int) ChronoUnit.DAYS.between(from, date.latest());
  }

  /**
   * Follows a pot that so many were put into.
   *
   * @return whether any of its seedlings could be watched
   */
  private boolean follow(Code pot, int put, int putOn) {
    if (!walked.add(pot)) {
      return false;
    }
    List<About> about = new ArrayList<>();
    for (long entry : view.entriesOn(Subject.of(pot))) {
      Statement statement = view.effective(entry).orElseThrow();
      PartialDate date = statement.date();
      if (date != null && date.day() != 0 && day(date) >= 0) {
        about.add(new About(day(date), statement));
      } else if (leaves(statement, pot)) {
        lose(Lost.LEFT_UNCOUNTED, pot);
        putAside(put, putOn);
        return put > 0;
      }
    }
    about.sort(Comparator.comparingInt(About::day));
    int last = -1;
    for (int i = 0; i < about.size(); i++) {
      if (showsLiving(about.get(i).statement(), pot)) {
        last = i;
      }
    }
    if (last < 0) {
      if (put == 0) {
        lose(Lost.NEVER_COUNTED, pot);
      }
      putAside(put, putOn);
      return put > 0;
    }
    Standing standing = new Standing(pot, put, putOn);
    for (int i = 0; i <= last; i++) {
      standing.next = nextCount(about.subList(i + 1, about.size()), pot);
      if (!standing.read(about.get(i))) {
        lose(Lost.LEFT_UNCOUNTED, pot);
        break;
      }
    }
    standing.end();
    return true;
  }

  /**
   * The next count of a pot.
   *
   * @param alive how many it found alive
   * @param up how many it found to have come up; below 0 if it does not say
   * @param deaths how many are entered as dead before it
   */
  private record NextCount(int alive, int up, int deaths) {}

  /** The next count, if nobody leaves before it but by dying, in a number that is known. */
  private static @Nullable NextCount nextCount(List<About> later, Code pot) {
    int deaths = 0;
    for (About one : later) {
      if (one.statement() instanceof FateRecorded fate
          && fate.fate() == Fate.DEAD
          && exact(fate.count()) >= 0) {
        deaths += exact(fate.count());
      } else if (leaves(one.statement(), pot)) {
        return null;
      }
      if (one.statement() instanceof Counted counted) {
        for (Counted.Reading reading : counted.readings()) {
          if (reading.code().equals(pot) && exact(reading.alive()) >= 0) {
            return new NextCount(exact(reading.alive()), exact(reading.germinated()), deaths);
          }
        }
      }
    }
    return null;
  }

  /** Those put into a pot that tells no more of them were last seen when they were. */
  private void putAside(int put, int on) {
    if (put > 0) {
      events.add(new Event(on, 0, 0, put));
    }
  }

  private static boolean leaves(Statement statement, Code pot) {
    return (statement instanceof Potted potted && potted.from().equals(pot))
        || (statement instanceof Numbered numbered && numbered.from().equals(pot))
        || (statement instanceof FateRecorded fate && !fate.fate().isHere());
  }

  private static boolean showsLiving(Statement statement, Code pot) {
    return leaves(statement, pot)
        || (statement instanceof Counted counted
            && counted.readings().stream()
                .anyMatch(reading -> reading.code().equals(pot) && exact(reading.alive()) >= 0));
  }

  private static int exact(@Nullable Count count) {
    return count != null && count.isExact()
        ? (int) Math.min(Integer.MAX_VALUE / 4, count.size().orElseThrow())
        : -1;
  }

  /** How many stand in one pot, from entry to entry. */
  private final class Standing {
    private final Code pot;
    private int up;
    private int present;
    private int day;

    /** How many the last count missed that no entry has explained. */
    private int unexplained;

    /** The next count, if nobody leaves before it but by dying. */
    private @Nullable NextCount next;

    Standing(Code pot, int put, int putOn) {
      this.pot = pot;
      this.up = put;
      this.present = put;
      this.day = putOn;
    }

    /** Reads the next entry; false if from there on nobody knows how many there are. */
    boolean read(About about) {
      day = Math.max(day, about.day());
      Statement statement = about.statement();
      if (statement instanceof Counted counted) {
        counted.readings().stream()
            .filter(reading -> reading.code().equals(pot))
            .forEach(this::read);
        return true;
      }
      if (statement instanceof Potted potted && potted.from().equals(pot)) {
        int taken = exact(potted.count());
        if (taken < 0) {
          return false;
        }
        require(taken);
        present -= taken;
        if (view.item(potted.group()).isPresent()) {
          follow(potted.group(), taken, day);
        } else {
          putAside(taken, day);
        }
        return true;
      }
      if (statement instanceof Numbered numbered && numbered.from().equals(pot)) {
        require(numbered.codes().size());
        present -= numbered.codes().size();
        numbered.codes().forEach(this::followSeedling);
        return true;
      }
      return !(statement instanceof FateRecorded fate) || fate.fate().isHere() || leave(fate);
    }

    private void read(Counted.Reading reading) {
      int counted = exact(reading.germinated());
      if (counted > up) {
        enter(counted - up);
      }
      int alive = exact(reading.alive());
      if (alive > present) {
        enter(alive - present);
        unexplained = 0;
      } else if (alive >= 0) {
        unexplained = present - alive;
        die(unexplained);
      }
    }

    private boolean leave(FateRecorded fate) {
      int number = fate.count() == null ? present : exact(fate.count());
      if (number < 0) {
        return false;
      }
      if (fate.fate() == Fate.DEAD && fate.count() != null) {
        int known = alreadyMissed(number);
        unexplained -= known;
        number -= known;
      }
      require(number);
      if (fate.fate() == Fate.DEAD) {
        die(number);
      } else {
        present -= number;
        putAside(number, day);
      }
      return true;
    }

    /** How many of those entered as dead the last count had missed, as the next one shows. */
    private int alreadyMissed(int dead) {
      if (next == null || next.up() > up) {
        return 0;
      }
      int more = next.alive() - (present - dead - next.deaths());
      return Math.max(0, Math.min(Math.min(dead, unexplained), more));
    }

    /** Whoever leaves has come up, counted or not. */
    private void require(int number) {
      if (number > present) {
        enter(number - present);
      }
    }

    private void enter(int number) {
      up += number;
      present += number;
      events.add(new Event(day, number, 0, 0));
    }

    private void die(int number) {
      if (number > 0) {
        present -= number;
        events.add(new Event(day, 0, number, 0));
      }
    }

    /** Who still stands there was last seen now. */
    void end() {
      putAside(present, day);
    }

    private void followSeedling(Code seedling) {
      Optional<Item> item = view.item(seedling);
      if (item.isEmpty()) {
        putAside(1, day);
        return;
      }
      PartialDate until = item.get().until();
      if (!item.get().fate().isHere()) {
        if (until == null || until.day() == 0) {
          lose(Lost.DIED_UNDATED, seedling);
          putAside(1, day);
        } else if (item.get().fate() == Fate.DEAD) {
          events.add(new Event(Math.max(day, day(until)), 0, 1, 0));
        } else {
          putAside(1, Math.max(day, day(until)));
        }
        return;
      }
      takenAlive = true;
      putAside(
          1,
          from == null || lastDay.isBefore(from)
              ? day
              : Math.max(day, (int) ChronoUnit.DAYS.between(from, lastDay)));
    }

    private int day(PartialDate date) {
      return Watch.this.day(date);
    }
  }
}
