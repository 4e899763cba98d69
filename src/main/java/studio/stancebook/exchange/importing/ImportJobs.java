package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.security.concurrent.DelegatingSecurityContextRunnable;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Author;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.Refusal;
import studio.stancebook.problem.TooMany;

/** Runs imports in the background, one after the other, so that whoever started one can leave and come back. */
@Component
public class ImportJobs implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(ImportJobs.class);
    private static final int MOST_WAITING = 50;
    private static final int PATIENCE_SECONDS = 20;

    private final Importer importer;
    private final ReceivedFiles files;
    private final ThreadPoolExecutor executor;

    ImportJobs(Importer importer, ReceivedFiles files) {
        this.files = files;
        this.importer = importer;
        this.executor = new ThreadPoolExecutor(
                1, 1, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(MOST_WAITING), work -> new Thread(work, "imports"));
        executor.allowCoreThreadTimeOut(true);
    }

    /**
     * Starts a run over an upload.
     *
     * @param by who brings it in
     * @throws Conflict if one is running already
     * @throws TooMany if too many are waiting
     */
    public void start(Upload upload, PackageFile file, ImportOptions options, Author by) {
        synchronized (upload) {
            if (upload.busy()) {
                throw new Conflict("The file is being worked on already.");
            }
            ImportJob job = new ImportJob(options.dryRun());
            try {
                upload.start(job);
                executor.execute(
                        new DelegatingSecurityContextRunnable(() -> run(job, file, upload.fileName(), by, options)));
            } catch (RejectedExecutionException full) {
                job.failed("Too many imports are waiting.");
                throw new TooMany("Too many imports are waiting; try again later.");
            }
        }
    }

    private void run(ImportJob job, PackageFile file, String fileName, Author by, ImportOptions options) {
        try {
            job.done(
                    file instanceof PackageFile.OfTable table
                            ? ofTable(job, table, fileName, by, options)
                            : importer.run(new Delivery(file, fileName, by), options, job::at));
        } catch (Refusal refused) {
            job.failed(refused.detail());
        } catch (RuntimeException failure) {
            LOG.error("An import in the background failed", failure);
            job.failed("Something went wrong here, and nothing was brought in. Try again;"
                    + " if it stays, tell whoever runs this server.");
        } catch (Error fatal) {
            job.failed("The server could not do this, and nothing was brought in.");
            throw fatal;
        }
    }

    private ImportReport ofTable(
            ImportJob job, PackageFile.OfTable table, String fileName, Author by, ImportOptions options) {
        Path path = files.newFile("refused");
        ImportReport report = null;
        try {
            RefusedRows refused = new RefusedRows(path, table.headings());
            try (refused) {
                report = importer.run(new Delivery(table, fileName, by, refused::add), options, job::at);
            }
            job.keep(new ImportJob.RefusedTable(path, refused.rows()));
            return report;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } finally {
            if (report == null) {
                ReceivedFiles.delete(path);
            }
        }
    }

    @Override
    public void destroy() throws InterruptedException {
        executor.shutdown();
        if (!executor.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            executor.shutdownNow();
        }
    }
}
