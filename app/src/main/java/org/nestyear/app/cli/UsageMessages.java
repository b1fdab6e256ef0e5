package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Spelling;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Puts what is wrong with the arguments into one sentence and, where it helps, an advice line. */
final class UsageMessages {
    private UsageMessages() {}

    static Refusal of(ParameterException problem) {
        CommandLine command = problem.getCommandLine();
        if (problem instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unknown(command, unmatched.getUnmatched().get(0));
        }
        if (problem instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            return missing(command, missing.getMissing());
        }
        ArgSpec option = problem.getArgSpec();
        String message = String.valueOf(problem.getMessage()).strip();
        String expected = option == null ? "" : "; expected " + described(option);
        return Refusal.usage(
                (message.endsWith(".") ? message.substring(0, message.length() - 1) : message) + expected + ".",
                help(command));
    }

    private static Refusal unknown(CommandLine command, String argument) {
        List<String> known = new ArrayList<>();
        boolean top = command.getParent() == null;
        if (argument.startsWith("-")) {
            command.getCommandSpec().options().forEach(option -> known.add(option.longestName()));
        } else if (top) {
            known.addAll(command.getSubcommands().keySet());
        }
        String what = argument.startsWith("-") ? "option" : top ? "command" : "argument";
        String sentence = "\"" + argument + "\" is not " + (what.equals("command") ? "a " : "an ") + what + " of "
                + command.getCommandSpec().qualifiedName()
                + (known.isEmpty()
                        ? "; expected nothing there."
                        : "; expected one of " + String.join(", ", known) + ".");
        String nearest = Spelling.advice(argument, known);
        return Refusal.usage(sentence, nearest.isEmpty() ? help(command) : nearest);
    }

    private static Refusal missing(CommandLine command, List<ArgSpec> missing) {
        List<String> names = new ArrayList<>();
        missing.forEach(option -> names.add(described(option)));
        return Refusal.usage(
                command.getCommandSpec().qualifiedName() + " lacks something; expected " + String.join(", and ", names)
                        + ".",
                help(command));
    }

    private static String described(ArgSpec argument) {
        String name = argument instanceof OptionSpec option
                ? option.longestName() + " " + argument.paramLabel()
                : argument.paramLabel();
        String[] description = argument.description();
        String words = description.length == 0 ? "" : description[0];
        return name + " (" + (words.endsWith(".") ? words.substring(0, words.length() - 1) : words) + ")";
    }

    private static String help(CommandLine command) {
        return "Maybe see " + command.getCommandSpec().qualifiedName() + " --help.";
    }
}
