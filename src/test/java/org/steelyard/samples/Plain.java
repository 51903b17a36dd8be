package org.steelyard.samples;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.find.SeasonStatistics;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnMap.UnknownColumns;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.LastMinuteRule;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.policy.SpreadRule;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.type.TankShare;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.RunFacts.ConfigFile;
import org.steelyard.report.output.RunFacts.InputFile;
import org.steelyard.report.output.RunFacts.SkippedFile;
import org.steelyard.report.output.SkippedRows;
import org.steelyard.run.SeasonRequest;

/** Values with nothing in the parts that a test does not look at. */
public final class Plain {

    private Plain() {}

    public static AircraftType aircraftType(
            String id,
            String name,
            Geometry geometry,
            MassLimits limits,
            Cabin cabin,
            List<Hold> holds,
            List<LoadGroup> groups,
            FuelSystem fuel,
            List<Envelope> envelopes,
            List<TrimScale> trimScales) {
        return new AircraftType(
                id, name, geometry, limits, cabin, holds, groups, fuel, envelopes, trimScales, List.of());
    }

    public static Assessment assessment(
            List<Finding> findings, List<EnvelopeMargin> margins, Optional<TrafficLoad> trafficLoad) {
        return new Assessment(findings, margins, trafficLoad, Optional.empty());
    }

    public static CabinZone cabinZone(String id, String name, double armM, int seats) {
        return new CabinZone(id, name, armM, seats, List.of());
    }

    public static ColumnMap columnMap(
            String name,
            List<String> filePatterns,
            String charset,
            Optional<Character> delimiter,
            boolean decimalComma,
            UnknownColumns unknownColumns,
            List<ColumnRule> columns) {
        return new ColumnMap(
                name,
                filePatterns,
                charset,
                delimiter,
                decimalComma,
                DigitGrouping.NONE,
                unknownColumns,
                columns,
                SourceForm.FLIGHTS,
                "",
                MergedCells.FIRST_ROW,
                BlankLoad.NOT_SAID);
    }

    public static ColumnMap columnMap(
            String name,
            List<String> filePatterns,
            String charset,
            Optional<Character> delimiter,
            boolean decimalComma,
            DigitGrouping grouping,
            UnknownColumns unknownColumns,
            List<ColumnRule> columns) {
        return new ColumnMap(
                name,
                filePatterns,
                charset,
                delimiter,
                decimalComma,
                grouping,
                unknownColumns,
                columns,
                SourceForm.FLIGHTS,
                "",
                MergedCells.FIRST_ROW,
                BlankLoad.NOT_SAID);
    }

    public static ColumnMap columnMap(
            String name,
            List<String> filePatterns,
            String charset,
            Optional<Character> delimiter,
            boolean decimalComma,
            DigitGrouping grouping,
            UnknownColumns unknownColumns,
            List<ColumnRule> columns,
            SourceForm form,
            String scheme,
            MergedCells mergedCells) {
        return new ColumnMap(
                name,
                filePatterns,
                charset,
                delimiter,
                decimalComma,
                grouping,
                unknownColumns,
                columns,
                form,
                scheme,
                mergedCells,
                BlankLoad.NOT_SAID);
    }

    public static InputFile inputFile(
            String name,
            String sha256,
            long bytes,
            String mapName,
            long rowsSeen,
            long accepted,
            long rejected,
            long blank,
            List<String> notes) {
        return new InputFile(name, sha256, bytes, mapName, rowsSeen, accepted, rejected, blank, 0, notes);
    }

    public static Loading loading(
            Origin origin,
            FlightIdent flight,
            Tail tail,
            FlightSetting setting,
            Crew crew,
            Load load,
            Fuel fuel,
            PerformanceLimits performance,
            OptionalDouble recordedTrimUnits,
            List<Extra> extras) {
        return new Loading(
                origin,
                flight,
                tail,
                setting,
                tail.scheme(),
                crew,
                load,
                fuel,
                LastMinuteChange.NONE,
                performance,
                recordedTrimUnits,
                extras,
                List.of());
    }

    public static Loading loading(
            Origin origin,
            FlightIdent flight,
            Tail tail,
            FlightSetting setting,
            MassScheme scheme,
            Crew crew,
            Load load,
            Fuel fuel,
            LastMinuteChange change,
            PerformanceLimits performance,
            OptionalDouble recordedTrimUnits,
            List<Extra> extras) {
        return new Loading(
                origin,
                flight,
                tail,
                setting,
                scheme,
                crew,
                load,
                fuel,
                change,
                performance,
                recordedTrimUnits,
                extras,
                List.of());
    }

    public static MarkingScheme markingScheme(
            String name, double passPercent, double followPercent, List<ItemRule> items) {
        return new MarkingScheme(name, passPercent, followPercent, DuplicateRule.LAST, items);
    }

    public static Policy policy(
            double marginalCgPercentMac,
            double marginalMassPercent,
            double marginalLoadPercent,
            double marginalTrimUnits,
            SharingRule sharing) {
        return new Policy(
                marginalCgPercentMac,
                marginalMassPercent,
                marginalLoadPercent,
                marginalTrimUnits,
                sharing,
                Optional.empty(),
                Optional.empty(),
                DuplicateRule.FIRST,
                Optional.empty(),
                Optional.empty(),
                0,
                0);
    }

    public static Policy policy(
            double marginalCgPercentMac,
            double marginalMassPercent,
            double marginalLoadPercent,
            double marginalTrimUnits,
            SharingRule sharing,
            Optional<RecordedTrimRule> recordedTrim) {
        return new Policy(
                marginalCgPercentMac,
                marginalMassPercent,
                marginalLoadPercent,
                marginalTrimUnits,
                sharing,
                recordedTrim,
                Optional.empty(),
                DuplicateRule.FIRST,
                Optional.empty(),
                Optional.empty(),
                0,
                0);
    }

    public static Policy policy(
            double marginalCgPercentMac,
            double marginalMassPercent,
            double marginalLoadPercent,
            double marginalTrimUnits,
            SharingRule sharing,
            Optional<RecordedTrimRule> recordedTrim,
            Optional<LastMinuteRule> lastMinute,
            DuplicateRule duplicates) {
        return new Policy(
                marginalCgPercentMac,
                marginalMassPercent,
                marginalLoadPercent,
                marginalTrimUnits,
                sharing,
                recordedTrim,
                lastMinute,
                duplicates,
                Optional.empty(),
                Optional.empty(),
                0,
                0);
    }

    public static Policy policy(
            double marginalCgPercentMac,
            double marginalMassPercent,
            double marginalLoadPercent,
            double marginalTrimUnits,
            SharingRule sharing,
            Optional<RecordedTrimRule> recordedTrim,
            Optional<LastMinuteRule> lastMinute,
            DuplicateRule duplicates,
            Optional<ChanceRule> chance,
            Optional<SpreadRule> spread,
            double remedyReservePercentMac) {
        return new Policy(
                marginalCgPercentMac,
                marginalMassPercent,
                marginalLoadPercent,
                marginalTrimUnits,
                sharing,
                recordedTrim,
                lastMinute,
                duplicates,
                chance,
                spread,
                remedyReservePercentMac,
                0);
    }

    public static RunFacts runFacts(
            String season,
            String version,
            List<String> options,
            List<InputFile> inputs,
            List<ConfigFile> config,
            List<SkippedFile> skipped) {
        return new RunFacts(season, version, options, inputs, config, skipped, SkippedRows.NONE, List.of(), List.of());
    }

    public static RunFacts runFacts(
            String season,
            String version,
            List<String> options,
            List<InputFile> inputs,
            List<ConfigFile> config,
            List<SkippedFile> skipped,
            SkippedRows skippedRows,
            List<String> remarks) {
        return new RunFacts(season, version, options, inputs, config, skipped, skippedRows, remarks, List.of());
    }

    public static SeasonRequest seasonRequest(
            Path season,
            String name,
            Configuration configuration,
            ReadOptions reading,
            Path reports,
            int threads,
            String version,
            List<String> options) {
        return new SeasonRequest(
                season, name, configuration, reading, reports, threads, version, List.of(), options, false, false);
    }

    public static SeasonSummary seasonSummary(
            StatusCount all,
            List<StatusCount> types,
            List<StatusCount> tails,
            List<StatusCount> routes,
            List<FindingCount> findings,
            List<TrimGroup> trim,
            List<WorstFlight> worst) {
        return new SeasonSummary(
                all, types, tails, routes, findings, trim, worst, List.of(), List.of(), SeasonStatistics.none(), 0);
    }

    public static StudentSheet studentSheet(
            Origin origin, String student, String exercise, Map<SheetItem, Claim> claims) {
        return new StudentSheet(origin, student, exercise, EnumSet.allOf(SheetItem.class), claims);
    }

    public static Tail tail(String registration, AircraftType type, MassMoment basic) {
        return new Tail(registration, type, basic, Optional.empty());
    }

    public static Tank tank(String id, String name, double capacityKg, List<TankPoint> armTable) {
        return new Tank(id, name, capacityKg, armTable, false);
    }

    public static TankPoint tankPoint(double quantityKg, double armM) {
        return new TankPoint(quantityKg, armM, false);
    }

    public static TankShare tankShare(int tank, double share, double untilKg) {
        return new TankShare(tank, share, untilKg, false);
    }

    public static TrimGroup trimGroup(
            String typeId,
            String flaps,
            String thrust,
            TrimUnit unit,
            Optional<Spread> trimUnits,
            Spread cgPercentMac,
            long marginal,
            long breached) {
        return new TrimGroup(typeId, flaps, thrust, unit, trimUnits, cgPercentMac, marginal, breached, false);
    }

    public static TrimScale trimScale(
            Phase phase,
            String flaps,
            String thrustRating,
            TrimUnit unit,
            TrimLaw law,
            double stepUnits,
            double bandLowUnits,
            double bandHighUnits) {
        return new TrimScale(
                phase,
                flaps,
                thrustRating,
                unit,
                law,
                stepUnits,
                bandLowUnits,
                bandHighUnits,
                SettingRounding.NEAREST_HALFWAY_UP,
                TrimBasis.DOCUMENT);
    }
}
