package org.shedboard.app.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.text.Normalizer;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shedboard.board.NamedScreen;
import org.shedboard.files.TallyTable;
import org.shedboard.grid.Size;
import org.shedboard.hours.Activity;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Rounding;
import org.shedboard.register.Rung;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.words.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/** Reads command lines. */
public final class CommandLines {
    /** Longer than anything a form takes. */
    private static final int LONGEST_TEXT = 200;

    /** Columns and rows of a screen, up to 999 each. */
    private static final Pattern SIZE = Pattern.compile("([1-9][0-9]{0,2})x([1-9][0-9]{0,2})");

    private CommandLines() {}

    /** What came out of a command line. */
    public sealed interface Read {
        /**
         * Something to do.
         *
         * @param wish empty where no command was named
         */
        record Asked(Globals globals, Optional<Wish> wish) implements Read {}

        /** Help or the version, to be shown as it is. */
        record Show(List<String> lines) implements Read {}

        /** It cannot be understood; a sentence and a hint. */
        record Wrong(List<String> lines) implements Read {}
    }

    public static Read read(List<String> arguments) {
        CommandLine line = line(arguments);
        try {
            ParseResult result = line.parseArgs(arguments.toArray(String[]::new));
            StringWriter shown = new StringWriter();
            line.setOut(new PrintWriter(shown, true));
            line.getSubcommands().values().forEach(each -> each.setOut(new PrintWriter(shown, true)));
            if (CommandLine.executeHelpRequest(result) != null) {
                return new Read.Show(shown.toString().lines().toList());
            }
            Root root = (Root) line.getCommandSpec().userObject();
            return new Read.Asked(root.globals(), wishOf(result));
        } catch (ParameterException wrong) {
            String sentence = wrong.getMessage().replaceAll("\\s+", " ").strip();
            return new Read.Wrong(List.of(
                    sentence, hint(wrong.getCommandLine().getCommandSpec().qualifiedName())));
        }
    }

    /** Where to read how a command is used. */
    public static String hint(String command) {
        return Words.say("command.hint", command);
    }

    /** The names of all commands, in the order in which they are listed. */
    public static List<String> names() {
        return Root.COMMANDS.stream().map(CommandLines::nameOf).toList();
    }

    private static Optional<Wish> wishOf(ParseResult result) {
        return result.hasSubcommand()
                ? Optional.of((Wish) result.subcommand().commandSpec().userObject())
                : Optional.empty();
    }

    /** With all commands. */
    static CommandLine line() {
        return line(type -> true);
    }

    /**
     * With no more commands than these words can mean, for putting each together takes its time; all where they name none, or ask for
     * help, which lists them.
     */
    private static CommandLine line(List<String> words) {
        boolean isHelp = words.contains("-h") || words.contains("--help");
        boolean isNamed = Root.COMMANDS.stream().anyMatch(type -> words.contains(nameOf(type)));
        return line(type -> isHelp || !isNamed || words.contains(nameOf(type)));
    }

    private static String nameOf(Class<?> type) {
        return type.getAnnotation(Command.class).name();
    }

    private static CommandLine line(Predicate<Class<?>> wanted) {
        CommandLine line = new CommandLine(new Root());
        Root.COMMANDS.stream().filter(wanted).forEach(line::addSubcommand);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.registerConverter(String.class, CommandLines::text);
        line.registerConverter(Mud.class, CommandLines::mud);
        line.registerConverter(LocalDateTime.class, text -> moment(text, LocalDateTime::parse, "command.at_unread"));
        line.registerConverter(LocalDate.class, text -> moment(text, LocalDate::parse, "command.date_unread"));
        named(line, Depth.class);
        named(line, Mark.class);
        named(line, Payer.class);
        named(line, OwnersWord.Answer.class);
        named(line, Hold.Reason.class);
        named(line, Rung.Said.class);
        named(line, Activity.OtherWork.Kind.class);
        named(line, Activity.Break.Kind.class);
        named(line, Rounding.Unit.class);
        named(line, Rounding.Direction.class);
        named(line, HoursRules.Basis.class);
        named(line, TallyTable.class);
        named(line, StockCommand.Deed.class);
        named(line, NamedScreen.class);
        line.registerConverter(Size.class, CommandLines::size);
        line.registerConverter(ServerName.class, CommandLines::server);
        return line;
    }

    private static <E extends Enum<E>> void named(CommandLine line, Class<E> type) {
        line.registerConverter(
                type,
                text -> Named.find(type, text)
                        .orElseThrow(() ->
                                new TypeConversionException(Words.say("command.not_one_of", text, Named.all(type)))));
    }

    private static <T> T moment(String text, Function<String, T> read, String sentence) {
        try {
            return read.apply(text);
        } catch (DateTimeParseException unread) {
            throw new TypeConversionException(Words.say(sentence, text));
        }
    }

    private static Mud mud(String text) {
        return text.matches("[0-3]")
                ? Mud.of(Integer.parseInt(text))
                : Named.find(Mud.class, text)
                        .orElseThrow(() -> new TypeConversionException(Words.say("form.which_mud")));
    }

    private static Size size(String text) {
        Matcher parts = SIZE.matcher(text);
        if (!parts.matches()) {
            throw new TypeConversionException(Words.say("command.size_unread", text));
        }
        return new Size(Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)));
    }

    private static ServerName server(String text) {
        return ServerName.parse(text)
                .orElseThrow(() -> new TypeConversionException(Words.say("command.server_unread", text)));
    }

    /** Text from people is kept composed and without control characters. */
    private static String text(String typed) {
        String clean = Normalizer.normalize(typed, Normalizer.Form.NFC)
                .replaceAll("\\p{Cntrl}+", " ")
                .strip();
        if (clean.length() > LONGEST_TEXT) {
            throw new TypeConversionException(Words.say("command.too_long", LONGEST_TEXT));
        }
        return clean;
    }
}
