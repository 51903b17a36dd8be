package org.steelyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.cli.option.Version;
import org.steelyard.config.Configuration;
import org.steelyard.config.value.WrittenAmount;
import org.steelyard.model.trim.FlapName;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.report.flight.TrimCardFiles;
import org.steelyard.run.OneFlight;
import org.steelyard.trim.TrimCard;
import org.steelyard.trim.TrimCards;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes trim cards. */
@Command(
        name = "cards",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Trim cards: a one-page table of settings for each type and flap setting.",
        description = {
            "",
            "Bands of CG down, bands of mass across (one column where the scale does not depend on mass). Writes "
                    + TrimCardFiles.PAGE + ", a card on each printed page, and " + TrimCardFiles.BOOK
                    + ", a card on each sheet.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  steelyard cards",
            "  steelyard cards --type jet180 --flaps 1 --cg-step 2%% --mass-step 4t"
        })
final class CardsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Option(names = "--type", paramLabel = "TYPE", description = "One type only (all types).")
    private Optional<String> type;

    @Option(
            names = {"-f", "--flaps"},
            paramLabel = "FLAPS",
            description = "One flap setting only (all).")
    private Optional<String> flaps;

    @Option(
            names = "--cg-step",
            paramLabel = "STEP",
            defaultValue = "1%",
            description = "Width of the bands of CG in %% MAC (1%%).")
    private String cgStep;

    @Option(names = "--mass-step", paramLabel = "MASS", description = "Width of the bands of mass (about seven bands).")
    private Optional<String> massStep;

    @Option(
            names = {"-o", "--into"},
            paramLabel = "FOLDER",
            defaultValue = "reports/cards",
            description = "Where the cards are written (${DEFAULT-VALUE}).")
    private Path into;

    @Override
    public Integer call() throws CannotException {
        double cgStepPercentMac = amount("--cg-step", cgStep, WrittenAmount::percentMac);
        OptionalDouble massStepKg = massStep.isPresent()
                ? OptionalDouble.of(amount("--mass-step", massStep.get(), WrittenAmount::massKg))
                : OptionalDouble.empty();
        Configuration configuration = config.load();
        List<TrimCard> cards = cards(configuration, cgStepPercentMac, massStepKg);
        try {
            TrimCardFiles.write(cards, force.to(into, configuration, config.folder()), Version.number());
        } catch (IOException e) {
            throw CannotException.unwritten("The cards", into, e);
        }
        spec.commandLine()
                .getOut()
                .println(cards.size() + (cards.size() == 1 ? " trim card is" : " trim cards are") + " in " + into + ": "
                        + TrimCardFiles.PAGE + ", " + TrimCardFiles.BOOK);
        return ExitCode.FINISHED;
    }

    private interface Amount {
        double of(String text) throws WrittenAmount.NotReadException;
    }

    private double amount(String option, String text, Amount amount) {
        try {
            return amount.of(text);
        } catch (WrittenAmount.NotReadException e) {
            throw new ParameterException(spec.commandLine(), option + ": " + e.getMessage(), e);
        }
    }

    private List<TrimCard> cards(Configuration configuration, double cgStep, OptionalDouble massStepKg)
            throws CannotException {
        if (type.isPresent() && OneFlight.type(type.get(), configuration).isEmpty()) {
            throw new CannotException("There is no type '" + type.get() + "'; there are "
                    + String.join(", ", configuration.types().keySet()) + ".");
        }
        List<TrimCard> cards = new ArrayList<>();
        for (AircraftType one : configuration.types().values()) {
            for (TrimScale scale : one.trimScales()) {
                boolean wanted = type.map(id -> one.id().equalsIgnoreCase(id)).orElse(true)
                        && flaps.map(FlapName::of)
                                .map(scale.flaps()::equalsIgnoreCase)
                                .orElse(true);
                if (wanted) {
                    cards.add(card(one, scale, cgStep, massStepKg));
                }
            }
        }
        if (cards.isEmpty()) {
            throw new CannotException("There is no trim scale for that"
                    + type.map(id -> ": " + id).orElse("")
                    + flaps.map(setting -> ", flaps " + setting).orElse("") + ".");
        }
        return cards;
    }

    private static TrimCard card(AircraftType type, TrimScale scale, double cgStep, OptionalDouble massStepKg)
            throws CannotException {
        try {
            return TrimCards.card(type, scale, cgStep, massStepKg);
        } catch (IllegalArgumentException e) {
            throw new CannotException(type.id() + ", flaps " + scale.flaps() + ": " + e.getMessage());
        }
    }
}
