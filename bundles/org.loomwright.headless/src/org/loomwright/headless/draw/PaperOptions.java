// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.diagram.paper.PaperChoice;
import org.loomwright.diagram.paper.PaperSize;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.EnumWord;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Options of drawings on sheets of paper. */
final class PaperOptions {
    private static final int LARGEST_SCALE = 1000;

    private static final class SizeWord extends EnumWord<PaperSize> {
        SizeWord() {
            super(PaperSize.class);
        }
    }

    /** Reads {@code 1:20}. */
    private static final class PlotWord implements ITypeConverter<Integer> {
        private static final Pattern FORM = Pattern.compile("1:([1-9][0-9]{0,3})");

        @Override
        public Integer convert(String text) {
            Matcher matcher = FORM.matcher(text.replace(" ", ""));
            if (!matcher.matches() || Integer.parseInt(matcher.group(1)) > LARGEST_SCALE) {
                throw new TypeConversionException("'" + text + "' is none; expected 1:n, for example 1:20, n at most "
                        + LARGEST_SCALE);
            }
            return Integer.valueOf(matcher.group(1));
        }
    }

    /** Reads a date. */
    private static final class DateWord implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException unreadable) {
                throw new TypeConversionException("'" + text + "' is none; expected year-month-day, for example 2026-05-04");
            }
        }
    }

    @Option(names = "--paper", paramLabel = "SIZE", converter = SizeWord.class,
            description = "Draws on paper with frame and title block: a4, a3, a2, a1 or a0; on several sheets where one does not "
                    + "take it. A PDF without it takes the smallest that does.")
    private PaperSize size;

    @Option(names = "--landscape", description = "Paper with its longer side level. Without it and --portrait as takes less.")
    private boolean landscape;

    @Option(names = "--portrait", description = "Paper with its longer side upright.")
    private boolean portrait;

    @Option(names = "--plot", paramLabel = "1:N", converter = PlotWord.class,
            description = "Scale of a plan on paper. Default: the largest of 1:10, 1:20 and 1:50 that fits.")
    private Integer plot;

    @Option(names = "--date", paramLabel = "DATE", converter = DateWord.class,
            description = "Date in the title block. Default: today.")
    private LocalDate date;

    @Option(names = "--drawn-by", paramLabel = "NAME", description = "Who drew it, for the title block.")
    private String drawnBy;

    @Option(names = "--checked-by", paramLabel = "NAME", description = "Who checked it, for the title block.")
    private String checkedBy;

    /** True when any of them is given. */
    boolean given() {
        return size != null || landscape || portrait || plot != null || date != null || drawnBy != null || checkedBy != null;
    }

    /**
     * The paper.
     *
     * @throws BadInputException when both ways round are asked for
     */
    PaperChoice paper() {
        if (landscape && portrait) {
            throw new BadInputException("--landscape and --portrait exclude each other");
        }
        return new PaperChoice(size, landscape ? Boolean.TRUE : portrait ? Boolean.FALSE : null);
    }

    /**
     * n of the scale 1 : n; 0 for none asked for.
     *
     * @throws BadInputException when a drawing that has no scale is to be plotted to one
     */
    int plot(Diagram diagram) {
        if (plot != null && diagram != Diagram.PLAN) {
            throw new BadInputException("--plot is for the plan; other drawings are not to scale");
        }
        return plot == null ? 0 : plot;
    }

    LocalDate date() {
        return date == null ? LocalDate.now() : date;
    }

    String drawnBy() {
        return drawnBy == null ? "" : drawnBy;
    }

    String checkedBy() {
        return checkedBy == null ? "" : checkedBy;
    }
}
