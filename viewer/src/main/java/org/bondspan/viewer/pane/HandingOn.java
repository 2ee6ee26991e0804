package org.bondspan.viewer.pane;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.out.PdfFile;
import org.bondspan.sheet.out.PngFile;
import org.bondspan.sheet.out.SvgFile;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.viewer.model.Cautions;
import org.bondspan.viewer.model.Scenes;
import org.bondspan.viewer.plan.PlanPane;
import org.bondspan.viewer.plan.PlanScene;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Message;
import org.bondspan.viewer.work.SeenPlan;
import org.bondspan.viewer.work.Version;

/** Hands on what is seen, as a file or on paper, and the full set of sheets, take-off and report. */
final class HandingOn {
    private static final double PIXELS_PER_INCH = 144;
    private static final double POINTS_PER_PIXEL = 0.75;

    private final Actions actions;
    private final Supplier<PlanPane> pane;

    HandingOn(Actions actions, Supplier<PlanPane> pane) {
        this.actions = actions;
        this.pane = pane;
    }

    void png() {
        export(Dialogs.Kind.PNG, drawing -> PngFile.of(drawing, PIXELS_PER_INCH));
    }

    void svg() {
        export(Dialogs.Kind.SVG, SvgFile::of);
    }

    void pdf() {
        export(Dialogs.Kind.PDF, drawing -> PdfFile.of(List.of(drawing)));
    }

    private void export(Dialogs.Kind kind, Function<Drawing, byte[]> format) {
        Desk desk = actions.desk();
        seen(desk, UnaryOperator.identity())
                .ifPresentOrElse(
                        drawing -> actions.dialogs()
                                .save(kind, name(desk))
                                .ifPresent(file -> actions.bench().write(file, () -> format.apply(drawing))),
                        this::nothing);
    }

    private static String name(Desk desk) {
        return desk.opened().map(opened -> opened.stem()).orElse("site") + "."
                + desk.look().level().replaceAll("[^A-Za-z0-9_-]", "-");
    }

    /** All plans that are shown, as one drawing; those side by side in frames of one size. */
    private Optional<Drawing> seen(Desk desk, UnaryOperator<PlanScene> change) {
        double width = Math.max(200, pane.get().getWidth() * POINTS_PER_PIXEL);
        double height = Math.max(150, pane.get().getHeight() * POINTS_PER_PIXEL);
        List<SeenPlan.Part> parts = Scenes.of(desk).stream()
                .map(plan -> new SeenPlan.Part(plan.head(), change.apply(plan.scene()), width, height))
                .toList();
        return desk.opened()
                .filter(opened -> !parts.isEmpty())
                .map(opened -> new SeenPlan(
                        opened.site().name() + ", level " + desk.look().level(),
                        parts,
                        Cautions.of(desk).cautions()));
    }

    private void nothing() {
        actions.run(Asking.say(Message.notice("Open a site first: there is nothing to hand on yet.")));
    }

    /** Sheets, take-off and report of the answer. */
    void handOut() {
        Desk desk = actions.desk();
        if (desk.opened().isEmpty() || desk.answer().isEmpty() || desk.work().isPresent()) {
            actions.run(Asking.say(Message.notice("There is no answer yet that could be handed out.")));
            return;
        }
        actions.dialogs()
                .directory("Directory for sheets, take-off and report")
                .ifPresent(directory -> actions.bench()
                        .handOut(
                                desk.opened().get(),
                                desk.answer().get(),
                                Version.program(),
                                directory,
                                this::mayOverwrite));
    }

    /** Asks on the thread of the window and waits; closing the window counts as no. */
    private boolean mayOverwrite(List<Path> existing) {
        FutureTask<Boolean> asked = new FutureTask<>(() -> actions.dialogs()
                .confirm(
                        existing.size() + " of the files are there already, "
                                + existing.get(0).getFileName() + " among them. Overwrite them?",
                        "Overwrite"));
        Platform.runLater(asked);
        try {
            return asked.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }

    /** Prints what is seen, on light paper, one page. */
    void print() {
        Optional<Drawing> drawing = seen(actions.desk(), scene -> scene.withPalette(Palette.LIGHT));
        if (drawing.isEmpty()) {
            nothing();
            return;
        }
        Optional<PrinterJob> job = job();
        if (job.isEmpty()) {
            actions.run(Asking.say(Message.trouble(
                    "There is no printer",
                    List.of("Set one up in the system, or export what is seen as PDF from the menu Site."))));
            return;
        }
        print(job.get(), drawing.get());
    }

    private static Optional<PrinterJob> job() {
        try {
            return Printer.getAllPrinters().isEmpty()
                    ? Optional.empty()
                    : Optional.ofNullable(PrinterJob.createPrinterJob());
        } catch (SecurityException | UnsupportedOperationException unable) {
            return Optional.empty();
        }
    }

    private void print(PrinterJob job, Drawing drawing) {
        if (!job.showPrintDialog(pane.get().getScene().getWindow())) {
            job.cancelJob();
            return;
        }
        Paper paper = job.getJobSettings().getPageLayout().getPaper();
        PageLayout page =
                job.getPrinter().createPageLayout(paper, PageOrientation.LANDSCAPE, Printer.MarginType.DEFAULT);
        job.getJobSettings().setPageLayout(page);
        ImageView picture =
                new ImageView(new Image(new ByteArrayInputStream(PngFile.of(drawing, 2 * PIXELS_PER_INCH))));
        picture.setPreserveRatio(true);
        picture.setFitWidth(page.getPrintableWidth());
        picture.setFitHeight(page.getPrintableHeight());
        boolean printed = job.printPage(picture) && job.endJob();
        actions.run(Asking.say(
                printed
                        ? Message.notice("Printed on " + job.getPrinter().getName())
                        : Message.trouble("It was not printed", List.of("The printer did not take the page."))));
    }
}
