// SPDX-License-Identifier: MIT
// A vehicle as a table: what exports of spreadsheets look like, and what is wrong with them, by
// cell.
#include "files.hpp"

#include <array>

namespace pelt::read_test {
namespace {

std::shared_ptr<const Source> table(std::string text, std::string name = "van.csv") {
    return std::make_shared<const Source>(Source{std::move(name), std::move(text), true});
}

std::string faults_of_table(const std::string& text) {
    std::string out;
    for (const std::string& line : told(read::vehicle(table(text))))
        out += line + "\n";
    return out;
}

/// The vehicle as our own table has it, and what that does not hold.
std::string described(const read::Reading<Vehicle>& reading) {
    for (const std::string& line : told(reading))
        FAIL_CHECK(line);
    REQUIRE(reading.value.has_value());
    std::string text = read::table_of(*reading.value).text;
    for (const Panel& panel : reading.value->panels)
        text += std::to_string(static_cast<int>(panel.is.value_or(PanelKind::plain_panel))) + " " +
                std::to_string(panel.edges.size()) + " " +
                std::to_string(std::get<OutlineForm>(panel.form).from_size) + "\n";
    return text;
}

const std::string in_yaml = R"(vehicle: Van of Monday
body: hatchback
units: mm
panels:
  hood: {size: [1380.5, 972], crown: {wide: 42, high: 26.5}, forward: up, redo: 3.5 %, edges: {all: {wrap: 12}, top: {wrap: 30}}}
  front door: {sides: both, size: [1016, 656], crown: {wide: 10, high: 34}, edges: {bottom: {wrap: 28}}, group: sides}
  fuel flap: {sides: right, count: 2, size: [170, 160], direction: any}
  box: {is: plain panel, extra: roof box, size: [900, 400], measured: over, forward: up, crown: {wide: 12}, edges: {left: {wrap: 5}, right: {wrap: 6}}}
)";

const std::string with_commas = R"(vehicle,Van of Monday
body,hatchback
units,mm
panel,sides,count,width,height,rise over width,rise over height,forward,tuck,tuck top,tuck bottom,tuck left,tuck right,direction,group,extra,is,redo,measured
hood,,,1380.5,972,42,26.5,up,12,30,,,,,,,,3.5 %,

"front door",both,,1016,656,10,34,,,,28,,,,sides,,,,
fuel flap,right,2,170,160,,,,,,,,,any,,,,,
box,,,900,400,12,,up,,,,5,6,,,"roof box",plain panel,,over
)";

const std::string with_semicolons = R"(vehicle;"Van of Monday";;;;;;;;;;;;;;;;;
body;hatchback;;;;;;;;;;;;;;;;;
;;;;;;;;;;;;;;;;;;
units;mm;;;;;;;;;;;;;;;;;
redo;panel;sides;height;width;count;rise over width;rise over height;forward;tuck top;tuck;tuck bottom;tuck left;tuck right;direction;group;extra;is;measured
3,5%;hood;;972;1380,5;;42;26,5;up;30;12;;;;;;;;
;front door;both;656;1016;;10;34;;;;28;;;;sides;;;
;fuel flap;right;160;170;2;;;;;;;;;any;;;;
;box;;400;900;;12;;up;;;;5;6;;;roof box;plain panel;over
)";

std::string with_tabs_and_mark() {
    std::string out = "\xEF\xBB\xBF";
    for (const char c : with_commas) {
        if (c == '\n')
            out += '\r';
        out += c == ',' ? '\t' : c;
    }
    return out;
}

TEST_CASE("three kinds of export give the vehicle of the YAML file") {
    const std::string expected = described(read::vehicle(file(in_yaml)));
    CHECK(described(read::vehicle(table(with_commas))) == expected);
    CHECK(described(read::vehicle(table(with_semicolons))) == expected);
    CHECK(described(read::vehicle(table(with_tabs_and_mark()))) == expected);
}

TEST_CASE("a table that is written is read as the same vehicle") {
    const auto first = read::vehicle(table(with_semicolons));
    REQUIRE(first.value.has_value());
    const std::string text = read::table_of(*first.value).text;
    const auto again = read::vehicle(table(text));
    CHECK(described(again) == described(first));
}

TEST_CASE("a table without a name is called as its file") {
    const auto reading = read::vehicle(table("panel,width,height,forward\nhood,900,700,up\n",
                                             "cars/van of monday.csv"));
    REQUIRE(reading.value.has_value());
    CHECK(reading.value->name == "van of monday");
}

TEST_CASE("quoted cells hold separators and quotes") {
    const auto reading = read::vehicle(
        table("vehicle,\"Van, \"\"blue\"\"\"\npanel,width,height,forward\nhood,900,700,up\n"));
    REQUIRE(reading.value.has_value());
    CHECK(reading.value->name == "Van, \"blue\"");
}

TEST_CASE("lines may end in carriage returns alone") {
    const auto reading =
        read::vehicle(table("vehicle,V\rpanel,width,height,forward\r\rhood,900,7x0,up\r"));
    CHECK(told(reading) == std::vector<std::string>{
                               "van.csv:C4: panel 'hood': height '7x0' is not a length: 'x' is "
                               "not a unit; the units are mm, cm, m, in, ft and yd"});
}

TEST_CASE("units of a table and of a cell") {
    const auto reading = read::vehicle(table(
        "units,in\npanel,width,height,forward\nhood,\"54 3/8\",36.5,up\nroof,1200 mm,1 m,up\n"));
    REQUIRE(reading.value.has_value());
    const auto& hood = std::get<OutlineForm>(reading.value->panels[0].form);
    CHECK(hood.segments[2].to.x == doctest::Approx(1381.125));
    const auto& roof = std::get<OutlineForm>(reading.value->panels[1].form);
    CHECK(roof.segments[2].to.y == doctest::Approx(1000));
}

TEST_CASE("what is wrong with a whole table") {
    CHECK(faults_of_table("") ==
          "van.csv:A1: the file is empty; 'pelt list --form -o form.csv' gives a table to fill "
          "in\n");
    CHECK(faults_of_table("a,b\n1,2\n") ==
          "van.csv:A1: no cell of the file says 'panel'; give the table a row of headings, such as "
          "panel, sides, width, height\n");
    CHECK(faults_of_table("vehicle,V\nwidth,pannel,height\n900,hood,700\n") ==
          "van.csv:B2: no heading is 'panel', but 'pannel'; did you mean 'panel'?\n");
    CHECK(faults_of_table("panel,width,height\n\n,,\n") ==
          "van.csv:A1: no panel stands below the headings; give every panel a row\n");
    CHECK(faults_of_table("panel,width\nhood,900\n") ==
          "van.csv:A1: the table has no column 'height'; give every panel its width and its "
          "height\n");
    CHECK(faults_of_table("panel,width,height\nhood,900,700\nroof,\"900,700\n") ==
          "van.csv:B3: the quote that opens this cell is not closed; close it, or take it out\n");
    CHECK(faults_of_table("panel,width,height\nhood,900,7\"00\n") ==
          "van.csv:C2: a quote stands inside this cell; put the cell in quotes and write its own "
          "twice, as \"\"\n");
    CHECK(faults_of_table("\xFF\xFEp\0a") ==
          "van.csv:A1: the file is UTF-16 text; export it as CSV in UTF-8\n");
    CHECK(faults_of_table("vehicle,V\npanel,width,height\nT\xFCr,900,700\n") ==
          "van.csv:A3: this is not UTF-8 text; export the table in UTF-8\n");
}

TEST_CASE("one kind of decimal mark a file") {
    CHECK(faults_of_table("panel;width;height;forward\nhood;900,5;700.5;up\n") ==
          "van.csv:C2: panel 'hood': height '700.5' has a decimal point, but B2 a decimal comma; "
          "write all decimals of the file in one way\n");
    CHECK(faults_of_table("panel;width;height;forward\nhood;1.380;700;up\n") ==
          "van.csv:B2: panel 'hood': width '1.380' has a point before three digits: are these "
          "thousands?; write 1380, or another number of decimals\n");
    CHECK(faults_of_table("panel,width,height,forward\nhood,\"900,5\",700,up\n") ==
          "van.csv:B2: panel 'hood': width '900,5' has a decimal comma, and commas part the cells; "
          "write decimals with a point, or part the cells by semicolons\n");
}

/// A good table of so many panels with one cell spoilt.
struct Spoilt {
    std::string text;
    std::string cell;
};

constexpr std::array<const char*, 19> headings{
    "panel",    "sides",       "count",     "width",      "height",    "measured", "rise over width",
    "rise over height", "forward", "tuck",  "tuck top",   "tuck bottom", "tuck left", "tuck right",
    "direction", "group",      "extra",     "is",         "redo"};

std::vector<std::vector<std::string>> good_rows() {
    return {{"hood", "", "", "1380", "972", "straight", "42", "26", "up", "12", "30", "12", "12",
             "12", "one-way", "front", "", "hood", "3 %"},
            {"roof", "", "1", "1100", "1500", "over", "10", "", "up", "10", "", "", "", "", "", "",
             "", "", ""},
            {"front door", "both", "1", "1016", "656", "", "10", "34", "left", "", "6", "28", "", "",
             "two-way", "sides", "", "front door", "4 %"}};
}

Spoilt spoilt(std::size_t row, std::size_t column, const std::string& value, char separator) {
    std::vector<std::vector<std::string>> rows = good_rows();
    rows[row][column] = value;
    Spoilt out;
    const std::string part(1, separator);
    for (const char* heading : headings)
        out.text += (heading == headings.front() ? "vehicle" + part + "V\n" : part) + heading;
    out.text += "\n";
    for (const auto& cells : rows) {
        for (std::size_t c = 0; c < cells.size(); ++c)
            out.text += (c == 0 ? "" : part) + cells[c];
        out.text += "\n";
    }
    out.cell = cell_name(static_cast<int>(row) + 3, static_cast<int>(column) + 1);
    return out;
}

/// Values that are wrong in a column.
std::vector<std::string> wrong_values(std::size_t column) {
    const std::string heading = headings[column];
    const std::vector<std::string> no_length{"abc", "1.380", "1e3", "0x10", "010", "12 mmm", "40 km",
                                             "3 1/0 in", "nan", "--5"};
    if (heading == "panel")
        return {"a/b", "a=b", ""};
    if (heading == "width" || heading == "height") {
        std::vector<std::string> all = no_length;
        all.insert(all.end(), {"", "0", "-900", "31 m"});
        return all;
    }
    if (heading.starts_with("rise") || heading.starts_with("tuck")) {
        std::vector<std::string> all = no_length;
        all.emplace_back("6 m");
        return all;
    }
    if (heading == "count")
        return {"0", "-1", "2.5", "x", "10001", "1.000"};
    if (heading == "redo")
        return {"3", "96 %", "-1 %", "x %", "1.234 %"};
    if (heading == "group" || heading == "extra")
        return {"a/b", "x=y"};
    return {"sideways", "up down", "42"};
}

TEST_CASE("each of several hundred broken tables gets one sentence that names its cell") {
    std::size_t broken = 0;
    for (const char separator : {',', ';', '\t'})
        for (std::size_t row = 0; row < good_rows().size(); ++row)
            for (std::size_t column = 0; column < headings.size(); ++column)
                for (const std::string& value : wrong_values(column)) {
                    const Spoilt made = spoilt(row, column, value, separator);
                    CAPTURE(made.text);
                    const std::vector<std::string> lines = told(read::vehicle(table(made.text)));
                    REQUIRE(lines.size() == 1);
                    CAPTURE(lines.front());
                    CHECK(lines.front().starts_with("van.csv:" + made.cell + ": "));
                    ++broken;
                }
    CHECK(broken >= 300);
}

TEST_CASE("tables cut short or changed at random never stop the reader") {
    const std::string good = spoilt(0, 0, "hood", ',').text;
    std::uint64_t state = 1;
    const auto next = [&] { return state = state * 6364136223846793005U + 1442695040888963407U; };
    constexpr int tries = 3'000;
    for (int i = 0; i < tries; ++i) {
        std::string text = good.substr(0, (next() >> 33U) % good.size());
        for (int k = 0; k < 3 && !text.empty(); ++k)
            text[(next() >> 33U) % text.size()] = ",;\t\"\n\r \xC3.x0"[(next() >> 33U) % 11];
        const auto reading = read::vehicle(table(text));
        CAPTURE(text);
        CHECK((reading.value.has_value() || !reading.faults.empty()));
        for (const std::string& line : told(reading))
            CHECK(line.starts_with("van.csv:"));
    }
}

} // namespace
} // namespace pelt::read_test
