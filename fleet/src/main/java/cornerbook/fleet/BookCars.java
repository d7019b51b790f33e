package cornerbook.fleet;

import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.say.Refused;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.apache.spark.util.TaskCompletionListener;

/** The cars of a book in a PostgreSQL database, as {@code cornerbook export --all} would write them, each read by the machine that needs it. */
final class BookCars {
    private static final Logger LOG = Logger.getLogger(BookCars.class.getName());

    private static final StructType CAR = new StructType()
            .add(CarLines.FILE, DataTypes.StringType)
            .add(CarLines.SITE, DataTypes.StringType)
            .add(CarLines.TEXT, DataTypes.StringType)
            .add(CarLines.UNREAD, DataTypes.StringType);

    private BookCars() {}

    /**
     * All cars of a book; they belong to no site.
     *
     * @param address as {@link Book#onServer} takes it
     * @throws Refused when the book cannot be used
     */
    static Dataset<Row> read(SparkSession spark, String address) {
        try (var book = Book.onServer(address)) {
            var ids = book.cars().listIds();
            int tasks = spark.sparkContext().defaultParallelism();
            return spark.createDataset(ids, Encoders.STRING())
                    .repartition(tasks)
                    .mapPartitions(reading(address), Encoders.row(CAR));
        } catch (BookException e) {
            throw new Refused(e.said());
        }
    }

    private static MapPartitionsFunction<String, Row> reading(String address) {
        return ids -> {
            var book = Book.onServer(address);
            TaskContext.get().addTaskCompletionListener((TaskCompletionListener) task -> book.close());
            return StreamSupport.stream(Spliterators.spliteratorUnknownSize(ids, Spliterator.ORDERED), false)
                    .flatMap(id -> line(book, id))
                    .iterator();
        };
    }

    /** A car that cannot be read keeps no other back, unless the book itself does not answer. */
    private static Stream<Row> line(Book book, String id) {
        var file = id.replaceAll("[^A-Za-z0-9._-]", "_") + ".json";
        try {
            return book.records().find(id).stream()
                    .map(record -> RowFactory.create(file, null, VisitFile.write(record), null));
        } catch (RuntimeException unreadable) {
            // Throws where the book is out of reach: then the task is done again.
            book.verdicts().judgedBy();
            LOG.log(Level.WARNING, "Car {0} of the book cannot be read: {1}", new Object[] {id, unreadable});
            return Stream.of(RowFactory.create(file, null, null, id));
        }
    }
}
