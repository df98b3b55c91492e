// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.Component;
import java.awt.Desktop;
import java.awt.print.Pageable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;

/** The machine that the window runs on. */
public final class DesktopPlatform implements Platform {

    @Override
    public Optional<Path> saveAs(Component over, Path suggested) {
        JFileChooser chooser =
                new JFileChooser(suggested.toAbsolutePath().getParent().toFile());
        chooser.setSelectedFile(suggested.toFile());
        return chosen(chooser, chooser.showSaveDialog(over));
    }

    @Override
    public Optional<Path> open(Component over, Path from) {
        JFileChooser chooser = new JFileChooser(from.toFile());
        chooser.setFileFilter(new FileNameExtensionFilter(Messages.of("open.filter"), "json"));
        return chosen(chooser, chooser.showOpenDialog(over));
    }

    @Override
    public Optional<Path> openTable(Component over, Path from) {
        JFileChooser chooser = new JFileChooser(from.toFile());
        chooser.setFileFilter(new FileNameExtensionFilter(Messages.of("open.tables"), "xlsx", "csv"));
        return chosen(chooser, chooser.showOpenDialog(over));
    }

    @Override
    public List<Path> openPictures(Component over, Path from) {
        JFileChooser chooser = new JFileChooser(from.toFile());
        chooser.setFileFilter(new FileNameExtensionFilter(Messages.of("open.pictures"), "jpg", "jpeg", "png"));
        chooser.setMultiSelectionEnabled(true);
        return chosen(chooser, chooser.showOpenDialog(over)).isEmpty()
                ? List.of()
                : Stream.of(chooser.getSelectedFiles()).map(File::toPath).toList();
    }

    @Override
    public Optional<Path> openPaper(Component over, Path from) {
        JFileChooser chooser = new JFileChooser(from.toFile());
        chooser.setFileFilter(new FileNameExtensionFilter(Messages.of("open.papers"), "pdf", "jpg", "jpeg", "png"));
        return chosen(chooser, chooser.showOpenDialog(over));
    }

    @Override
    public Optional<Path> folder(Component over, Path from) {
        JFileChooser chooser = new JFileChooser(from.toFile());
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        return chosen(chooser, chooser.showOpenDialog(over));
    }

    private static Optional<Path> chosen(JFileChooser chooser, int answer) {
        File file = chooser.getSelectedFile();
        return answer == JFileChooser.APPROVE_OPTION && file != null ? Optional.of(file.toPath()) : Optional.empty();
    }

    @Override
    public void open(Path file) throws IOException {
        if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
            throw new IOException(file + ": this machine opens no files from here");
        }
        Desktop.getDesktop().open(file.toFile());
    }

    @Override
    public void show(Path file) throws IOException {
        if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE_FILE_DIR)) {
            Desktop.getDesktop().browseFileDirectory(file.toFile());
        } else {
            open(file.toAbsolutePath().getParent());
        }
    }

    @Override
    public void print(Pageable pages, String title, Consumer<Printed> printed) {
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName(title);
        job.setPageable(pages);
        if (!job.printDialog()) {
            printed.accept(new Printed.Canceled());
            return;
        }
        Thread printing = new Thread(
                () -> {
                    Printed came;
                    try {
                        job.print();
                        came = new Printed.Done();
                    } catch (PrinterException | RuntimeException refused) {
                        came = new Printed.Failed(refused);
                    }
                    Printed described = came;
                    SwingUtilities.invokeLater(() -> printed.accept(described));
                },
                "printing");
        printing.setDaemon(true);
        printing.start();
    }
}
