// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.parts.AmpacityPoint;
import org.loomwright.model.parts.AmpacityTable;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.Cell;
import org.loomwright.model.parts.Coil;
import org.loomwright.model.parts.Contact;
import org.loomwright.model.parts.CurvePoint;
import org.loomwright.model.parts.Demand;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.parts.FuseCurve;
import org.loomwright.model.parts.GroupingPoint;
import org.loomwright.model.parts.GroupingTable;
import org.loomwright.model.parts.OcvPoint;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.PieceStock;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.parts.Threshold;
import org.loomwright.model.parts.WaySpec;

/** What holds for parts libraries and stock files beyond their structure. */
public final class PartsRules {
    private PartsRules() {
    }

    /** All violations of a library, structure included. */
    public static List<Violation> check(PartsLibrary library) {
        return all(library);
    }

    /** All violations of a stock file, structure included. */
    public static List<Violation> check(Stock stock) {
        return all(stock);
    }

    private static List<Violation> all(EObject root) {
        List<Violation> found = new ArrayList<>(StructureRules.check(root));
        for (Iterator<EObject> all = root.eAllContents(); all.hasNext();) {
            check(all.next(), found::add);
        }
        return found;
    }

    private static void check(EObject object, Consumer<Violation> found) {
        if (object instanceof AmpacityTable table) {
            rising(table, table.getPoints(), AmpacityPoint::getSectionMm2, "points", "sections", found);
            notFalling(table, table.getPoints(), AmpacityPoint::getAmps, "ratings fall while sections grow", found);
        } else if (object instanceof GroupingTable table) {
            rising(table, table.getPoints(), point -> decimal(point.getUpTo()), "points", "counts", found);
        } else if (object instanceof FuseCurve curve) {
            fuseCurve(curve, found);
        } else if (object instanceof CablePart cable) {
            rising(cable, cable.getRows(), CableRow::getSectionMm2, "rows", "sections", found);
        } else if (object instanceof Cell cell) {
            cell(cell, found);
        } else if (object instanceof Demand demand) {
            demand(demand, found);
        } else if (object instanceof Contact contact) {
            contact(contact, found);
        } else if (object instanceof Coil coil) {
            coil(coil, found);
        } else if (object instanceof Threshold threshold) {
            threshold(threshold, found);
        } else if (object instanceof WaySpec way && (way.getForms() == null || way.getForms().isBlank())) {
            found.accept(Violation.blocking("way-forms", way, "forms", "way names no form of protector that fits",
                    "for example blade-std"));
        } else if (object instanceof PieceStock piece) {
            piece(piece, found);
        }
    }

    private static BigDecimal decimal(Integer count) {
        return count == null ? null : BigDecimal.valueOf(count);
    }

    private static <T> void rising(EObject owner, List<T> points, Function<T, BigDecimal> of, String feature, String what,
            Consumer<Violation> found) {
        for (int i = 1; i < points.size(); i++) {
            BigDecimal before = of.apply(points.get(i - 1));
            BigDecimal here = of.apply(points.get(i));
            if (before != null && here != null && here.compareTo(before) <= 0) {
                found.accept(Violation.blocking("table-order", owner, feature,
                        what + " do not rise: " + before.toPlainString() + " is followed by " + here.toPlainString(),
                        what + " in rising order"));
                return;
            }
        }
    }

    private static <T> void notFalling(EObject owner, List<T> points, Function<T, BigDecimal> of, String message,
            Consumer<Violation> found) {
        for (int i = 1; i < points.size(); i++) {
            BigDecimal before = of.apply(points.get(i - 1));
            BigDecimal here = of.apply(points.get(i));
            if (before != null && here != null && here.compareTo(before) < 0) {
                found.accept(Violation.blocking("table-physics", owner, "points",
                        message + ": " + before.toPlainString() + " is followed by " + here.toPlainString(),
                        "a table that does not fall"));
                return;
            }
        }
    }

    private static void fuseCurve(FuseCurve curve, Consumer<Violation> found) {
        rising(curve, curve.getFastest(), CurvePoint::getTimesRated, "fastest", "currents", found);
        rising(curve, curve.getSlowest(), CurvePoint::getTimesRated, "slowest", "currents", found);
        notRising(curve, curve.getFastest(), "fastest", found);
        notRising(curve, curve.getSlowest(), "slowest", found);
        if (curve.getSlowest().isEmpty()) {
            found.accept(Violation.blocking("fuse-curve", curve, "slowest", "the curve has no slowest points",
                    "at least one slowest point"));
        }
    }

    private static void notRising(FuseCurve curve, List<CurvePoint> points, String feature, Consumer<Violation> found) {
        for (int i = 1; i < points.size(); i++) {
            BigDecimal before = points.get(i - 1).getSeconds();
            BigDecimal here = points.get(i).getSeconds();
            if (before != null && here != null && here.compareTo(before) > 0) {
                found.accept(Violation.blocking("fuse-curve", curve, feature,
                        "times grow with the current: " + before.toPlainString() + " s is followed by "
                                + here.toPlainString() + " s", "times that fall"));
                return;
            }
        }
    }

    private static void cell(Cell cell, Consumer<Violation> found) {
        rising(cell, cell.getOcv(), OcvPoint::getCharge, "ocv", "states of charge", found);
        for (int i = 1; i < cell.getOcv().size(); i++) {
            BigDecimal before = cell.getOcv().get(i - 1).getVolt();
            BigDecimal here = cell.getOcv().get(i).getVolt();
            if (before != null && here != null && here.compareTo(before) < 0) {
                found.accept(Violation.blocking("cell-ocv", cell, "ocv", "the open-circuit voltage falls with the charge",
                        "a voltage that does not fall"));
                break;
            }
        }
        if (cell.getRMinMilliohm() != null && cell.getRMaxMilliohm() != null
                && (cell.getRMinMilliohm().signum() <= 0 || cell.getRMinMilliohm().compareTo(cell.getRMaxMilliohm()) > 0)) {
            found.accept(Violation.blocking("cell-resistance", cell, "rMinMilliohm",
                    "smallest resistance " + cell.getRMinMilliohm().toPlainString() + " mohm against largest "
                            + cell.getRMaxMilliohm().toPlainString() + " mohm",
                    "a smallest resistance above 0 and not above the largest"));
        }
    }

    private static void demand(Demand demand, Consumer<Violation> found) {
        if (!demand.isSetLaw()) {
            return;
        }
        boolean stated = switch (demand.getLaw()) {
            case POWER -> positive(demand.getWatts());
            case CURRENT -> positive(demand.getAmps()) || positive(demand.getWatts()) && positive(demand.getRefV());
            case RESISTANCE -> positive(demand.getOhms()) || positive(demand.getWatts()) && positive(demand.getRefV());
        };
        if (!stated) {
            found.accept(Violation.blocking("demand-size", demand, null,
                    "a load of constant " + demand.getLaw().getLiteral() + " without its size",
                    "watts for power; amps, or watts at refV, for current; ohms, or watts at refV, for resistance"));
        }
        if (demand.getOffV() != null && demand.getRestartV() != null
                && demand.getRestartV().compareTo(demand.getOffV()) < 0) {
            found.accept(Violation.blocking("demand-hysteresis", demand, "restartV",
                    "restarts at " + demand.getRestartV().toPlainString() + " V, below the "
                            + demand.getOffV().toPlainString() + " V at which it stops", "restartV not below offV"));
        }
    }

    private static boolean positive(BigDecimal value) {
        return value != null && value.signum() > 0;
    }

    private static void contact(Contact contact, Consumer<Violation> found) {
        if (contact.isSetDriver() && contact.getDriver() == Driver.COIL && contact.getCoil() == null) {
            found.accept(Violation.blocking("contact-driver", contact, "coil", "no coil drives the contact", "the coil's name"));
        }
        if (contact.isSetDriver() && contact.getDriver() == Driver.THRESHOLD && contact.getThreshold() == null) {
            found.accept(Violation.blocking("contact-driver", contact, "threshold", "no threshold drives the contact",
                    "the threshold's name"));
        }
    }

    private static void coil(Coil coil, Consumer<Violation> found) {
        if (coil.getPickUpV() != null && coil.getDropOutV() != null && coil.getDropOutV().compareTo(coil.getPickUpV()) >= 0) {
            found.accept(Violation.blocking("coil-hysteresis", coil, "dropOutV", "releases at or above its pull-in voltage",
                    "dropOutV below pickUpV"));
        }
    }

    private static void threshold(Threshold threshold, Consumer<Violation> found) {
        if (threshold.getOnAt() != null && threshold.getOffAt() != null
                && threshold.getOnAt().compareTo(threshold.getOffAt()) == 0) {
            found.accept(Violation.blocking("threshold-gap", threshold, "offAt", "turns on and off at the same value",
                    "two values, so that it comes to rest"));
        }
        boolean volts = threshold.getPlus() != null && threshold.getMinus() != null;
        if (volts == (threshold.getShunt() != null)) {
            found.accept(Violation.blocking("threshold-sense", threshold, null, "senses " + (volts ? "two things" : "nothing"),
                    "either plus and minus, or shunt"));
        }
    }

    private static void piece(PieceStock piece, Consumer<Violation> found) {
        long named = java.util.stream.Stream.of(piece.getDevice(), piece.getProtector(), piece.getEnd(), piece.getPassage(),
                piece.getStrap(), piece.getConsumable(), piece.getDuct()).filter(java.util.Objects::nonNull).count();
        if (named != 1) {
            found.accept(Violation.blocking("stock-piece", piece, null, "names " + named + " parts", "exactly one part"));
        }
    }
}
