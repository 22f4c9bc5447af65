// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "report/csv_dialect.hpp"
#include "report/csv_text.hpp"

#include <doctest/doctest.h>

#include <stdexcept>
#include <string>
#include <vector>

using namespace pelt;

namespace {

using Record = std::vector<std::string>;

/// A strict reader of RFC 4180, section 2, but for the line end, which is LF: quotes only around a
/// whole field, none inside an unquoted one, every record as long as the first.
class StrictCsv {
public:
    explicit StrictCsv(const std::string& text) : text_(text) {}

    std::vector<Record> read() {
        std::vector<Record> records;
        while (at_ < text_.size()) {
            records.push_back(record());
            if (records.back().size() != records.front().size())
                throw std::runtime_error("a record of another length");
        }
        return records;
    }

private:
    Record record() {
        Record fields{field()};
        while (at_ < text_.size() && text_[at_] == ',') {
            ++at_;
            fields.push_back(field());
        }
        if (at_ == text_.size() || text_[at_++] != '\n')
            throw std::runtime_error("a record that does not end in LF");
        return fields;
    }
    std::string field() { return at_ < text_.size() && text_[at_] == '"' ? quoted() : plain(); }
    std::string plain() {
        const std::size_t end = text_.find_first_of(",\n", at_);
        const std::string value = text_.substr(at_, end - at_);
        if (value.find_first_of("\"\r") != std::string::npos)
            throw std::runtime_error("a quote or CR in an unquoted field");
        at_ = end == std::string::npos ? text_.size() : end;
        return value;
    }
    std::string quoted() {
        std::string value;
        for (++at_; at_ < text_.size(); ++at_) {
            if (text_[at_] != '"')
                value += text_[at_];
            else if (at_ + 1 < text_.size() && text_[at_ + 1] == '"')
                value += text_[at_++];
            else {
                ++at_;
                return value;
            }
        }
        throw std::runtime_error("a quoted field that does not end");
    }

    const std::string& text_;
    std::size_t at_ = 0;
};

std::vector<Record> records_of(const std::string& text) {
    return StrictCsv(text).read();
}

std::size_t column(const std::vector<Record>& records, const std::string& name) {
    for (std::size_t i = 0; i < records.at(0).size(); ++i)
        if (records[0][i] == name)
            return i;
    throw std::runtime_error("no column " + name);
}

} // namespace

// RFC 4180, section 2, items 5 to 7, with item 7's own example.
TEST_CASE("fields are quoted as RFC 4180 has it") {
    CHECK(report::csv_text("aaa") == "aaa");
    CHECK(report::csv_text("b\"bb") == "\"b\"\"bb\"");
    CHECK(report::csv_text("a,b") == "\"a,b\"");
    CHECK(report::csv_text("b\r\nbb") == "\"b\r\nbb\"");
    CHECK(report::csv_text(" spaces are data ") == " spaces are data ");
    CHECK(report::csv_line({"\"aaa\"", report::csv_text("b\"bb"), "\"ccc\""}) ==
          "\"aaa\",\"b\"\"bb\",\"ccc\"\n");
}

// OWASP, "CSV Injection" (www-community, commit 0e5e8f0): its risky first characters and its two
// worked examples.
TEST_CASE("texts that a spreadsheet would run get an apostrophe") {
    CHECK(report::csv_text("=1+2\";=1+2") == "\"'=1+2\"\";=1+2\"");
    CHECK(report::csv_text("=1+2'\" ;,=1+2") == "\"'=1+2'\"\" ;,=1+2\"");
    for (const char* risky : {"=x", "+x", "-x", "@x", "\tx"})
        CHECK(report::csv_text(risky) == std::string("'") + risky);
    CHECK(report::csv_text("\rx") == "\"'\rx\"");
    CHECK(report::csv_text("\nx") == "\"'\nx\"");
    CHECK(report::csv_text("x=1") == "x=1");
    CHECK(report::csv_text("") == "");
}

TEST_CASE("any text comes back through a strict reader") {
    const std::vector<std::string> texts{"",          "a",    "\"",  "\"\"",
                                         ",",         "a\nb", "Tür", "a\"b,",
                                         "ends in\r", "'",    "  ",  "a,\"b\"\r\n,c"};
    std::vector<std::string> fields;
    for (const std::string& text : texts)
        fields.push_back(report::csv_text(text));
    CHECK(records_of(report::csv_line(fields)) == std::vector<Record>{texts});
}

TEST_CASE("numbers that are not whole are told from texts that look like one") {
    for (const char* number : {"1.5", "-0.25", "00.0"})
        CHECK(report::is_decimal(number));
    for (const char* none :
         {"", "1", ".5", "1.", "1.5.2", "1,5", "1.5 ", "-", "-.5", "1e.5", "\"1.5\""})
        CHECK_FALSE(report::is_decimal(none));
    CHECK(report::csv_text("1.5") == "\"1.5\"");
}

TEST_CASE("semicolons take decimal commas with them, and CR LF changes line ends alone") {
    const std::string csv =
        report::csv_line({report::csv_text("a;b"), "1.5", report::csv_text("2.5"), "-0.250", ""}) +
        report::csv_line(
            {report::csv_text("x\ny,\"z\""), "3", report::csv_text("=1;2"), "", "4.0"});
    CHECK(report::in_dialect(csv, report::CsvDialect::comma) == csv);
    CHECK(report::in_dialect(csv, report::CsvDialect::semicolon) ==
          "\"a;b\";1,5;\"2.5\";-0,250;\n\"x\ny,\"\"z\"\"\";3;\"'=1;2\";;4,0\n");
    CHECK(report::in_dialect(csv, report::CsvDialect::rfc4180) ==
          "a;b,1.5,\"2.5\",-0.250,\r\n\"x\ny,\"\"z\"\"\",3,'=1;2,,4.0\r\n");
    CHECK(report::in_dialect("", report::CsvDialect::semicolon).empty());
}

TEST_CASE("one row a piece, in mm whatever the unit, texts made safe") {
    std::string vehicle = test::two_panels;
    vehicle.replace(vehicle.find("Small van"), 9, "'=van, \"small\"'");
    report::Sheet sheet = test::sheet(vehicle, test::plain_film);
    const auto records = records_of(report::to_csv(sheet));
    REQUIRE(records.size() == 3);
    CHECK(records[0].front() == "number");
    CHECK(records[1][column(records, "vehicle")] == "'=van, \"small\"");
    for (std::size_t i = 1; i < records.size(); ++i) {
        CHECK(records[i].front() == std::to_string(i));
        const bool roof = records[i][column(records, "panel")] == "roof";
        CHECK(records[i][column(records, "along_mm")] == (roof ? "1200" : "985"));
        CHECK(records[i][column(records, "finished_along_mm")] == (roof ? "1120" : "905"));
        CHECK(records[i][column(records, "wrapped_mm2")] == (roof ? "1624448" : "1248900"));
        CHECK(records[i][column(records, "stretch_percent")] == "");
    }
    sheet.unit = Unit::in;
    CHECK(records_of(report::to_csv(sheet)) == records);
}

TEST_CASE("a summary has one row a run and leaves empty what is not known") {
    const report::Sheet sheet = test::sheet(test::two_panels, test::plain_film);
    const auto records = records_of(report::to_summary_csv({sheet, sheet}));
    REQUIRE(records.size() == 3);
    CHECK(records[1] == records[2]);
    CHECK(records[1][column(records, "pieces")] == "2");
    CHECK(records[1][column(records, "total")] == "");
    CHECK(records[1][column(records, "demonstration")] == "yes");
}
