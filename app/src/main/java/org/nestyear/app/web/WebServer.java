package org.nestyear.app.web;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.concurrent.CountDownLatch;
import javax.sql.DataSource;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.service.DailyCopies;
import org.nestyear.app.service.RecordsHome;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.SeasonDesk;
import org.nestyear.app.service.SmallSums;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.support.GenericApplicationContext;

/** Starts the pages for this computer only. */
public final class WebServer {
    private static final int ANSWERED = 0;
    private static final int BAD_USAGE = 2;

    private WebServer() {}

    /**
     * Serves the pages until the program is stopped.
     *
     * @param arguments the words after {@code serve}
     * @param sums answers the small questions
     * @param out receives the address
     * @param err receives messages
     * @return 0 when stopped in good order, 2 when it could not start, told in one sentence
     */
    public static int start(String[] arguments, SmallSums sums, PrintStream out, PrintStream err) {
        if (Arrays.asList(arguments).contains("--help")) {
            out.println(ServeOptions.USAGE);
            return ANSWERED;
        }
        Running running;
        ServeOptions options;
        String records;
        try {
            options = ServeOptions.parse(arguments);
            Clock clock = Clock.system(ZoneId.systemDefault());
            RecordsHome home = options.home(System.getenv());
            DataSource source = home.open();
            running = launch(options, home.folder(), SeasonDesk.over(source, clock), sums, BookDesk.of(source, clock));
            records = home.words();
            DailyCopies.start(home, clock, message -> err.println("nestyear: " + message));
        } catch (IllegalArgumentException | Refusal e) {
            err.println("nestyear: " + e.getMessage());
            return BAD_USAGE;
        }
        out.println("Nestyear is at " + running.address());
        out.println("Stop it with Ctrl-C. Records are in " + records);
        out.flush();
        if (options.browser()) {
            Browser.open(running.address());
        }
        running.awaitStop();
        return ANSWERED;
    }

    /**
     * Starts the server and returns when it answers.
     *
     * @param home folder of the records
     * @throws IllegalArgumentException with one sentence if the port cannot be had
     */
    static Running launch(ServeOptions options, Path home, SeasonDesk desk, SmallSums sums, BookDesk books) {
        int port = FreePort.choose(options);
        LaunchToken token = options.token() ? LaunchToken.random() : LaunchToken.none();
        SpringApplication application = new SpringApplication(WebApplication.class);
        application.setWebApplicationType(WebApplicationType.SERVLET);
        application.setLogStartupInfo(false);
        application.addInitializers(context -> {
            GenericApplicationContext beans = (GenericApplicationContext) context;
            beans.registerBean(LaunchToken.class, () -> token);
            beans.registerBean(SeasonDesk.class, () -> desk);
            beans.registerBean(SmallSums.class, () -> sums);
            beans.registerBean(BookDesk.class, () -> books);
            beans.registerBean(KeptFolder.class, () -> new KeptFolder(home));
        });
        CountDownLatch stopped = new CountDownLatch(1);
        application.addListeners((ContextClosedEvent event) -> stopped.countDown());
        // As arguments, because nothing in the environment may open the pages to the network. Cookies do not tell ports
        // apart, so two servers at once need two names.
        planAhead(desk);
        ConfigurableApplicationContext context = application.run(
                "--server.address=127.0.0.1",
                "--server.port=" + port,
                "--server.servlet.session.cookie.name=nestyear-"
                        + (port == 0 ? ProcessHandle.current().pid() : port));
        return new Running(context, token, home, stopped);
    }

    // The plan of the current season is computed while the server starts, so that the first page need not wait for it.
    private static void planAhead(SeasonDesk desk) {
        Thread ahead = new Thread(
                () -> {
                    try {
                        desk.findCurrent();
                    } catch (Refusal refusal) {
                        // The page will say it to the keeper.
                    }
                },
                "plan-ahead");
        ahead.setDaemon(true);
        ahead.start();
    }

    /** A server that answers. */
    record Running(ConfigurableApplicationContext context, LaunchToken token, Path home, CountDownLatch stopped)
            implements AutoCloseable {
        int port() {
            return context.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
        }

        /** The address to open, with the launch token. */
        String address() {
            String query = token.isRequired() ? "?" + LaunchTokenFilter.PARAMETER + "=" + token.value() : "";
            return "http://127.0.0.1:" + port() + "/" + query;
        }

        void awaitStop() {
            try {
                stopped.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void close() {
            context.close();
        }
    }
}
