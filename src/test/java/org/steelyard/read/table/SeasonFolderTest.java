package org.steelyard.read.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeasonFolderTest {

    @TempDir
    private Path folder;

    @Test
    void filesAreListedInTheOrderOfTheirCharacters() throws Exception {
        for (String name : new String[] {"b.csv", "a10.TXT", "a9.tsv", "B.XLSX", "a1.Csv"}) {
            Files.createFile(folder.resolve(name));
        }
        assertThat(SeasonFolder.list(folder).files())
                .extracting(path -> path.getFileName().toString())
                .containsExactly("B.XLSX", "a1.Csv", "a10.TXT", "a9.tsv", "b.csv");
    }

    @Test
    void whatIsNotReadIsListedWithItsReason() throws Exception {
        for (String name : new String[] {"a.csv", ".hidden.csv", "~$open.xlsx", "old.xls", "notes.md"}) {
            Files.createFile(folder.resolve(name));
        }
        Files.createDirectory(folder.resolve("sub.csv"));
        assertThat(SeasonFolder.list(folder).skipped())
                .extracting(skipped -> skipped.name() + ": " + skipped.reason())
                .containsExactly(
                        ".hidden.csv: hidden",
                        "notes.md: not a kind of file that is read",
                        "old.xls: workbooks are read as .xlsx only; save it as .xlsx or .csv",
                        "sub.csv: sub-folders are not read",
                        "~$open.xlsx: it only marks a workbook that is open elsewhere");
    }

    @Test
    void oneFileIsASeason() throws Exception {
        Path file = Files.createFile(folder.resolve("one.CSV"));
        assertThat(SeasonFolder.list(file).files()).containsExactly(file);
    }

    @Test
    void aFolderWithoutFilesIsAProblem() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThatThrownBy(() -> SeasonFolder.list(empty))
                .isInstanceOf(SeasonUnreadableException.class)
                .hasMessage("empty: the folder holds no file to read (value '" + empty
                        + "'; expected at least one file .csv, .tsv, .txt or .xlsx)");
        Files.createFile(empty.resolve("readme.md"));
        assertThatThrownBy(() -> SeasonFolder.list(empty))
                .hasMessageContaining("the folder holds no file to read; 1 other entry was passed over");
    }

    @Test
    void aPathThatIsNotThereIsAProblem() {
        Path missing = folder.resolve("missing");
        assertThatThrownBy(() -> SeasonFolder.list(missing))
                .isInstanceOf(SeasonUnreadableException.class)
                .hasMessage("missing: there is no such file or folder (value '" + missing
                        + "'; expected a file (.csv, .tsv, .txt or .xlsx) or a folder of them)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"season.xls", "season.pdf", "season"})
    void aFileOfAnotherKindIsAProblem(String name) throws IOException {
        Path file = Files.createFile(folder.resolve(name));
        assertThatThrownBy(() -> SeasonFolder.list(file))
                .isInstanceOf(SeasonUnreadableException.class)
                .hasMessageContaining("expected a file (.csv, .tsv, .txt or .xlsx)");
    }
}
