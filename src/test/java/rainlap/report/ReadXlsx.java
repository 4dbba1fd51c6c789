package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook read by a library that is not ours and did not write it; numbers as plain text, each sheet a table. */
final class ReadXlsx {
    private ReadXlsx() {}

    static Map<String, List<List<String>>> of(byte[] bytes) throws IOException {
        Map<String, List<List<String>>> out = new LinkedHashMap<>();
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            for (Sheet sheet : book) {
                isReadable(sheet);
                List<List<String>> rows = new ArrayList<>();
                int columns = sheet.getRow(0).getLastCellNum();
                for (int r = 0; r <= sheet.getLastRowNum(); r++) {
                    rows.add(row(sheet.getRow(r), columns));
                }
                out.put(sheet.getSheetName(), rows);
            }
        }
        return out;
    }

    private static List<String> row(Row row, int columns) {
        List<String> out = new ArrayList<>();
        for (int c = 0; c < columns; c++) {
            out.add(text(row.getCell(c)));
        }
        return out;
    }

    private static String text(Cell cell) {
        if (cell == null) {
            return "";
        }
        assertNotEquals(CellType.FORMULA, cell.getCellType());
        if (cell.getCellType() == CellType.NUMERIC) {
            return new BigDecimal(Double.toString(cell.getNumericCellValue())).stripTrailingZeros().toPlainString();
        }
        if (cell.getRowIndex() > 0 && cell.getCellType() == CellType.STRING) {
            assertEquals("@", cell.getCellStyle().getDataFormatString(), "text stays text when somebody edits it");
            assertTrue(cell.getCellStyle().getWrapText());
        }
        return cell.getStringCellValue();
    }

    private static void isReadable(Sheet sheet) {
        assertEquals(1, sheet.getPaneInformation().getHorizontalSplitPosition(), "the headings stay in view");
        assertTrue(sheet.getPaneInformation().isFreezePane());
        for (int c = 0; c < sheet.getRow(0).getLastCellNum(); c++) {
            int heading = sheet.getRow(0).getCell(c).getStringCellValue().lines().flatMap(l -> List.of(l.split(" ")).stream()).mapToInt(String::length).max().orElse(0);
            assertTrue(sheet.getColumnWidth(c) / 256.0 >= heading - 0.5, "no word of the heading " + sheet.getRow(0).getCell(c) + " is broken");
        }
    }
}
