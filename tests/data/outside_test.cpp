// SPDX-License-Identifier: MIT
// Drawings and papers looked at by programs of others: xmllint (libxml2), rsvg-convert (librsvg),
// qpdf, pdffonts and pdftotext (poppler). Sizes are read out of the files, not asked of pelt.
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

namespace pelt::data_test {
namespace {

using Words = std::vector<std::string>;

constexpr double mm_per_point = 25.4 / 72; // PDF 32000-1:2008, 8.3.2.3: default user space

class Desk {
public:
    Desk() {
        folder_.write("bar.yaml", "vehicle: Bar\ndemonstration: yes\npanels:\n"
                                  "  bar: {size: [1000, 300], forward: right, edges: none}\n");
        folder_.write("film.yaml", "film: Plain\ndemonstration: yes\n"
                                   "roll: {width: 1524 mm, trim: 6 mm}\ndirection: one-way\n"
                                   "allowances: {gap: 4 mm, handling: 0 mm}\n");
    }

    support::Result sh(const std::string& line) const {
        const std::string program = PELT_PROGRAM;
        return support::run(
            {.words = {"/bin/sh", "-c", line},
             .folder = folder_.path(),
             .environment = {{"LC_ALL", "C.UTF-8"},
                             {"HOME", folder_.path()},
                             {"PATH", program.substr(0, program.rfind('/')) + ":/usr/bin:/bin"}}});
    }
    /// Nothing to complain of, and nothing said.
    void is_silent(const std::string& line) const {
        CAPTURE(line);
        const support::Result result = sh(line);
        CHECK(result.errors == "");
        CHECK(result.status == 0);
    }
    std::string bytes(const std::string& name) const {
        return support::contents_of(folder_.path() + "/" + name);
    }

private:
    support::ScratchFolder folder_;
};

std::string name_of(const std::string& path) {
    const std::size_t begin = path.rfind('/') + 1;
    return path.substr(begin, path.rfind('.') - begin);
}

Words words_of(const std::string& text) {
    std::istringstream stream(text);
    Words words;
    for (std::string word; stream >> word;)
        words.push_back(word);
    return words;
}

/// pdffonts: two lines of heading, then a font a line; "emb" is the first of the last five words.
void all_fonts_are_embedded(const Desk& desk, const std::string& pdf) {
    const support::Result result = desk.sh("pdffonts " + pdf);
    std::istringstream lines(result.output);
    int fonts = 0;
    int line_number = 0;
    for (std::string line; std::getline(lines, line);) {
        if (++line_number <= 2)
            continue;
        const Words words = words_of(line);
        REQUIRE(words.size() >= 6);
        CAPTURE(line);
        CHECK(words[words.size() - 5] == "yes");
        CHECK(line.find("DejaVuSans") != std::string::npos);
        ++fonts;
    }
    CHECK(fonts >= 2);
}

void checks_out(const Desk& desk, const std::string& pdf) {
    const support::Result result = desk.sh("qpdf --check " + pdf);
    CAPTURE(result.output);
    CHECK(result.status == 0);
    CHECK(result.errors == "");
    all_fonts_are_embedded(desk, pdf);
}

struct Extent {
    double low_x = 1e9;
    double low_y = 1e9;
    double high_x = -1e9;
    double high_y = -1e9;
    void take(double x, double y) {
        low_x = std::min(low_x, x);
        low_y = std::min(low_y, y);
        high_x = std::max(high_x, x);
        high_y = std::max(high_y, y);
    }
    double width() const { return high_x - low_x; }
    double height() const { return high_y - low_y; }
};

/// A matrix of PDF: x' = a x + c y + e, y' = b x + d y + f.
using Matrix = std::array<double, 6>;

Matrix then(const Matrix& first, const Matrix& second) {
    const auto& [a, b, c, d, e, f] = first;
    const auto& [A, B, C, D, E, F] = second;
    return {a * A + b * C, a * B + b * D,     c * A + d * C,
            c * B + d * D, e * A + f * C + E, e * B + f * D + F};
}

/// The paths that the pages of a PDF stroke, in millimetres: a reader of path operators (PDF
/// 32000-1:2008, 8.4.4 and 8.5) for what qpdf has unpacked.
std::vector<Extent> stroked_paths(const std::string& unpacked) {
    std::vector<Extent> paths;
    std::vector<Matrix> saved;
    Matrix now{1, 0, 0, 1, 0, 0};
    Extent path;
    std::vector<double> numbers;
    const auto take = [&](double x, double y) {
        path.take((now[0] * x + now[2] * y + now[4]) * mm_per_point,
                  (now[1] * x + now[3] * y + now[5]) * mm_per_point);
    };
    std::istringstream stream(unpacked);
    for (std::string word; stream >> word;) {
        char* end = nullptr;
        const double number = std::strtod(word.c_str(), &end);
        if (end != word.c_str() && *end == '\0') {
            numbers.push_back(number);
            continue;
        }
        const std::size_t n = numbers.size();
        if (word == "stream") {
            now = {1, 0, 0, 1, 0, 0};
            saved.clear();
            path = {};
        } else if (word == "q") {
            saved.push_back(now);
        } else if (word == "Q" && !saved.empty()) {
            now = saved.back();
            saved.pop_back();
        } else if (word == "cm" && n >= 6) {
            now = then({numbers[n - 6], numbers[n - 5], numbers[n - 4], numbers[n - 3],
                        numbers[n - 2], numbers[n - 1]},
                       now);
        } else if ((word == "m" || word == "l") && n >= 2) {
            take(numbers[n - 2], numbers[n - 1]);
        } else if (word == "re" && n >= 4) {
            take(numbers[n - 4], numbers[n - 3]);
            take(numbers[n - 4] + numbers[n - 2], numbers[n - 3] + numbers[n - 1]);
        } else if (word == "S") {
            paths.push_back(path);
            path = {};
        } else if (word == "n" || word == "f" || word == "f*") {
            path = {};
        }
        numbers.clear();
    }
    return paths;
}

int count_near(const std::vector<Extent>& paths, double width, double height) {
    return static_cast<int>(std::count_if(paths.begin(), paths.end(), [&](const Extent& e) {
        return std::abs(e.width() - width) <= 0.1 && std::abs(e.height() - height) <= 0.1;
    }));
}

} // namespace

TEST_CASE("programs of others have nothing to complain of in any shipped vehicle's drawings") {
    const Desk desk;
    for (const std::string& path : files_of("vehicles")) {
        const std::string name = name_of(path);
        const std::string vehicle = std::string(PELT_TOP) + "/" + path;
        CAPTURE(name);
        desk.is_silent("pelt cut " + vehicle + " satin-hybrid -q -o sheet.pdf -o roll.svg");
        desk.is_silent("pelt cut " + vehicle +
                       " satin-hybrid -q --pattern -o pattern.pdf -o pieces.svg");
        desk.is_silent("xmllint --noout roll.svg pieces.svg");
        desk.is_silent("rsvg-convert -w 900 roll.svg -o roll.png");
        desk.is_silent("rsvg-convert -w 900 pieces.svg -o pieces.png");
        checks_out(desk, "sheet.pdf");
        checks_out(desk, "pattern.pdf");
        CHECK(desk.bytes("roll.svg").find("<script") == std::string::npos);
    }
}

TEST_CASE("the same files give the same papers, whatever the day, and --date is printed") {
    const Desk desk;
    desk.is_silent("pelt cut town-hatchback satin-hybrid -q -o a.pdf");
    desk.is_silent("sleep 1; TZ=Asia/Tokyo pelt cut town-hatchback satin-hybrid -q -o b.pdf "
                   "--threads 1");
    CHECK(desk.bytes("a.pdf") == desk.bytes("b.pdf"));
    CHECK(desk.sh("pdfinfo a.pdf").output.find("Date") == std::string::npos);
    desk.is_silent("pelt cut town-hatchback satin-hybrid -q -o c.pdf --date '27 Nov 2026'");
    CHECK(desk.sh("pdftotext a.pdf -").output.find("27 Nov 2026") == std::string::npos);
    CHECK(desk.sh("pdftotext c.pdf -").output.find("Date: 27 Nov 2026") != std::string::npos);
}

TEST_CASE("a form is a PDF, blank or with the panels of a vehicle") {
    const Desk desk;
    desk.is_silent("pelt list --form -q -o blank.pdf");
    desk.is_silent("pelt list --form town-hatchback --paper letter -q -o car.pdf");
    checks_out(desk, "blank.pdf");
    checks_out(desk, "car.pdf");
    CHECK(desk.sh("pdfinfo car.pdf").output.find("612 x 792 pts") != std::string::npos);
    const std::string text = desk.sh("pdftotext car.pdf -").output;
    CHECK(text.find("PANEL: front door") != std::string::npos);
    CHECK(text.find("MEASURING FORM") != std::string::npos);
}

TEST_CASE("full size: a piece of 1000 mm is 1000.0 mm in SVG") {
    const Desk desk;
    desk.is_silent("pelt cut bar.yaml film.yaml -q --by contour --pattern -o bar.svg");
    const std::string svg = desk.bytes("bar.svg");
    std::smatch page;
    REQUIRE(std::regex_search(svg, page,
                              std::regex("width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\" "
                                         "viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"")));
    CHECK(page[1] == page[3]);
    CHECK(page[2] == page[4]);
    std::smatch path;
    REQUIRE(std::regex_search(svg, path, std::regex("<path class=\"outline\" d=\"([^\"]*)\"")));
    Extent extent;
    const std::string d = path[1];
    const std::regex point("[ML]([-0-9.]+) ([-0-9.]+)");
    for (std::sregex_iterator p(d.begin(), d.end(), point), end; p != end; ++p)
        extent.take(std::stod((*p)[1]), std::stod((*p)[2]));
    CHECK(std::abs(extent.width() - 1000) <= 0.1);
    CHECK(std::abs(extent.height() - 300) <= 0.1);
}

TEST_CASE("full size: a piece of 1000 mm is 1000.0 mm over the pages of a PDF") {
    const Desk desk;
    for (const char* paper : {"a4", "letter"}) {
        CAPTURE(paper);
        desk.is_silent(std::string("pelt cut bar.yaml film.yaml -q --by contour --pattern "
                                   "-o bar.pdf --paper ") +
                       paper);
        desk.is_silent("qpdf --qdf --object-streams=disable bar.pdf bar.qdf");
        const std::vector<Extent> paths = stroked_paths(desk.bytes("bar.qdf"));
        const std::string info = desk.sh("pdfinfo bar.pdf").output;
        const std::size_t at = info.find("Pages:");
        REQUIRE(at != std::string::npos);
        const int pages = std::stoi(info.substr(at + 6));
        // The first page tells how the tiles go together; every other one has the cut outline and
        // what stays on, each in full, and the line to check the printer by.
        CHECK(pages > 4);
        CHECK(count_near(paths, 1000, 300) == 2 * (pages - 1));
        CHECK(count_near(paths, 100, 3) == pages - 1);
    }
}

} // namespace pelt::data_test
