// SPDX-License-Identifier: MIT
// The drawings of every shipped vehicle can be read: no label lies over another or leaves its
// piece, in letters as they are measured.
#include "order/order.hpp"
#include "picture_check.hpp"
#include "read/read.hpp"
#include "report/draw/roll.hpp"
#include "report/paper/canvas.hpp"
#include "report/paper/pages.hpp"
#include "report/report.hpp"
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace pelt::data_test {
namespace {

namespace draw = report::draw;

template <class T>
T value_of(const read::Reading<T>& reading) {
    if (!reading.value)
        throw std::runtime_error(to_string(reading.faults.at(0)));
    return *reading.value;
}

report::Sheet sheet_of(const std::string& vehicle, CutBy by, Unit unit) {
    const auto source = [](const std::string& path) {
        const auto loaded = read::load(std::string(PELT_TOP) + "/" + path);
        return *loaded.value;
    };
    order::Request request;
    request.vehicles = {value_of(read::vehicle(source(vehicle)))};
    request.film = value_of(read::film(source("films/satin-hybrid.yaml")));
    request.by = by;
    order::Outcome outcome = order::run(std::move(request));
    if (!outcome.plan)
        throw std::runtime_error(vehicle + " has no plan");
    return {
        .plan = *outcome.plan, .order = outcome.order, .warnings = outcome.faults, .unit = unit};
}

void check_page(const draw::Picture& page, const draw::Letters& letters, std::size_t& labels,
                std::set<std::string>& told) {
    test::PictureCheck check(page, letters);
    for (const std::string& fault : check.faults())
        told.insert(fault);
    labels += check.texts_in_pieces();
}

void check_sheet(const std::string& vehicle, CutBy by, Unit unit, report::Paper size) {
    CAPTURE(vehicle);
    const report::Sheet sheet = sheet_of(vehicle, by, unit);
    const report::paper::PaperLetters letters;
    std::size_t labels = 0;
    std::set<std::string> told;
    for (const draw::Picture& page : report::paper::sheet_pages(sheet, size, letters))
        check_page(page, letters, labels, told);
    // The drawing of SVG, whose letters are taken as wide as they may be.
    const draw::UnknownLetters unknown;
    const report::Measures measures(unit);
    const auto pieces = report::pieces_by_number(sheet.plan);
    for (std::size_t roll = 0; roll < sheet.plan.layout().rolls.size(); ++roll)
        check_page(draw::roll_picture(sheet, pieces, roll, measures,
                                      draw::in_true_size(sheet.plan.layout().rolls[roll].length),
                                      unknown),
                   unknown, labels, told);
    CHECK(labels > 2 * pieces.size());
    std::string all;
    for (const std::string& fault : told)
        all += fault + "\n";
    CHECK(all == "");
}

/// Every word that is drawn, page by page.
std::vector<std::set<std::string>> words_drawn(const std::vector<draw::Picture>& pages) {
    std::vector<std::set<std::string>> out;
    for (const draw::Picture& page : pages) {
        out.emplace_back();
        for (const draw::Mark& mark : page.marks)
            if (const auto* text = std::get_if<draw::Text>(&mark)) {
                std::istringstream stream(text->words);
                for (std::string word; stream >> word;)
                    out.back().insert(word);
            }
    }
    return out;
}

void check_quarter(std::size_t which) {
    const std::vector<std::string> vehicles = files_of("vehicles");
    REQUIRE(vehicles.size() >= 4);
    for (std::size_t i = which; i < vehicles.size(); i += 4)
        check_sheet(vehicles[i], CutBy::contour, Unit::in, report::Paper::letter);
}

} // namespace

TEST_CASE("no label lies over another or leaves its piece: straight cuts") {
    for (const std::string& vehicle : files_of("vehicles"))
        check_sheet(vehicle, CutBy::straight, Unit::mm, report::Paper::a4);
}

// In quarters, for laying out whole vehicles takes a while.
TEST_CASE("no label lies over another or leaves its piece: contour cuts, inches, first vehicles") {
    check_quarter(0);
}
TEST_CASE("no label lies over another or leaves its piece: contour cuts, inches, second ones") {
    check_quarter(1);
}
TEST_CASE("no label lies over another or leaves its piece: contour cuts, inches, third ones") {
    check_quarter(2);
}
TEST_CASE("no label lies over another or leaves its piece: contour cuts, inches, last ones") {
    check_quarter(3);
}

TEST_CASE("pdftotext (poppler) finds every word of a sheet on its page") {
    const report::Sheet sheet = sheet_of("vehicles/town-hatchback.yaml", CutBy::straight, Unit::mm);
    const report::paper::PaperLetters letters;
    const auto drawn = words_drawn(report::paper::sheet_pages(sheet, report::Paper::a4, letters));
    const support::ScratchFolder folder;
    folder.write("sheet.pdf", report::to_pdf(sheet, report::Paper::a4));
    std::string missing;
    std::size_t words = 0;
    for (std::size_t page = 1; page <= drawn.size(); ++page) {
        const std::string number = std::to_string(page);
        const support::Result found = support::run(
            {.words = {"/usr/bin/pdftotext", "-f", number, "-l", number, "sheet.pdf", "-"},
             .folder = folder.path(),
             .environment = {{"LC_ALL", "C.UTF-8"}}});
        REQUIRE(found.status == 0);
        for (const std::string& word : drawn[page - 1]) {
            ++words;
            if (found.output.find(word) == std::string::npos)
                missing += "page " + number + ": " + word + "\n";
        }
    }
    CHECK(missing == "");
    CHECK(words > 500);
}

} // namespace pelt::data_test
