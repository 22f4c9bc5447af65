// SPDX-License-Identifier: MIT
// Random panels with seam lines that cross, nearly coincide or run near an edge: they are divided
// so that the check finds every seam, or refused with a sentence.
//   PELT_RANDOM_JOBS=5000 test_verify -tc="random seam lines*"     more of them
#include "asked_jobs.hpp"
#include "model/error.hpp"
#include "order/order.hpp"
#include "random_figures.hpp"
#include "read/read.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <memory>
#include <string>
#include <vector>

namespace pelt {
namespace {

class Drawing {
public:
    explicit Drawing(std::uint64_t seed) : dice_(seed) {
        wide_ = dice_.whole(0, 4) == 0 ? dice_.whole(20, 200) : dice_.whole(200, 2'500);
        high_ = dice_.whole(0, 4) == 0 ? dice_.whole(15, 150) : dice_.whole(150, 1'800);
    }

    std::string vehicle() {
        std::string text = "vehicle: V\npanels:\n  panel: {outline: " + outline() +
                           ", forward: " + of({"up", "down", "left", "right"}) + edges();
        text += of({"", ", seam: anywhere", ", seam: at lines"});
        const int count = dice_.whole(1, 4);
        std::string lines;
        for (int i = 0; i < count; ++i)
            lines += (i == 0 ? "" : ", ") + line();
        return text + ", seam lines: [" + lines + "]}\n";
    }

    std::string film() {
        return "film: F\nroll: {width: " + of({"1524", "762", "300"}) +
               "}\ndirection: " + of({"one-way", "two-way"}) +
               "\nallowances: {overlap: " + of({"0", "1", "3", "10", "17.3", "20", "40"}) +
               ", handling: " + of({"0", "20"}) + "}\n";
    }

private:
    struct At {
        double x = 0;
        double y = 0;
    };

    std::string of(const std::vector<std::string>& texts) {
        return texts[static_cast<std::size_t>(dice_.whole(0, static_cast<int>(texts.size()) - 1))];
    }
    static std::string mm(double value) {
        const long tenths = std::lround(value * 10);
        return (tenths < 0 ? "-" : "") + std::to_string(std::labs(tenths) / 10) + "." +
               std::to_string(std::labs(tenths) % 10);
    }
    static std::string at(At p) { return "[" + mm(p.x) + ", " + mm(p.y) + "]"; }

    std::string outline() {
        const double in = wide_ * dice_.real(0.1, 0.4);
        const double up = high_ * dice_.real(0.1, 0.4);
        const double slant = wide_ * dice_.real(-0.2, 0.2);
        std::vector<At> ring{{0, 0}, {wide_, 0}, {wide_ + slant, high_}, {slant, high_}};
        if (dice_.whole(0, 2) == 0)
            ring = {{0, 0},         {wide_ - in, 0}, {wide_ - in, up}, {wide_, up},
                    {wide_, high_}, {in, high_},     {in, high_ - up}, {0, high_ - up}};
        else if (dice_.whole(0, 2) == 0)
            ring = {{0, 0},
                    {wide_, 0},
                    {wide_ + slant, high_},
                    {wide_ * 0.6, high_},
                    {wide_ * 0.6, high_ / 2},
                    {wide_ * 0.4, high_ / 2},
                    {wide_ * 0.4, high_},
                    {slant, high_}};
        std::string text;
        for (const At& p : ring)
            text += (text.empty() ? "[" : ", ") + at(p);
        return text + "]";
    }

    std::string edges() {
        const std::string wrap = mm(dice_.real(0, 30));
        const std::string stop = mm(dice_.real(1, 10));
        return of({", edges: none", ", edges: {all: {wrap: " + wrap + "}}",
                   ", edges: {all: {stop: " + stop + "}}",
                   ", edges: {all: {wrap: " + wrap + "}, 1-2: {stop: " + stop + "}}"});
    }

    double share() {
        const int kind = dice_.whole(0, 2);
        return kind == 0   ? dice_.real(0.1, 0.9)
               : kind == 1 ? dice_.real(0, 0.05)
                           : dice_.real(0.95, 1);
    }

    std::string line() {
        if (known_ && dice_.whole(0, 3) == 0) { // nearly where the one before it is
            const double off = (dice_.whole(0, 1) == 0 ? 1 : -1) * dice_.whole(1, 250) / 10.0;
            from_ = {from_.x + off, from_.y};
            to_ = {to_.x + off, to_.y + (dice_.whole(0, 1) == 0 ? off : 0)};
        } else if (dice_.whole(0, 1) == 0) {
            const double x = wide_ * share();
            const double slant = dice_.whole(0, 1) == 0 ? 0 : wide_ * dice_.real(-0.3, 0.3);
            from_ = {x - slant, -100};
            to_ = {x + slant, high_ + 100};
        } else {
            const double y = high_ * share();
            const double slant = dice_.whole(0, 1) == 0 ? 0 : high_ * dice_.real(-0.3, 0.3);
            from_ = {-100, y - slant};
            to_ = {wide_ + 100, y + slant};
        }
        known_ = true;
        return "{line: [" + at(from_) + ", " + at(to_) + "], use: " + of({"always", "needed"}) +
               "}";
    }

    test::Dice dice_;
    double wide_ = 0;
    double high_ = 0;
    bool known_ = false;
    At from_;
    At to_;
};

std::shared_ptr<const Source> source(std::string text) {
    return std::make_shared<const Source>(Source{"t.yaml", std::move(text)});
}

TEST_CASE("random seam lines: every seam is found by the check, or a sentence says what is wrong") {
    const int jobs = test::asked_jobs("PELT_RANDOM_JOBS", 300);
    int planned = 0;
    for (int seed = 1; seed <= jobs; ++seed) {
        Drawing drawing(static_cast<std::uint64_t>(seed) * 7'919);
        const std::string vehicle = drawing.vehicle();
        const std::string film = drawing.film();
        CAPTURE(vehicle);
        CAPTURE(film);
        order::Request request;
        const auto panels = read::vehicle(source(vehicle));
        const auto roll = read::film(source(film));
        REQUIRE(roll.value);
        if (!panels.value)
            continue;
        request.vehicles.push_back(*panels.value);
        request.film = *roll.value;
        request.effort.trial = true;
        try {
            const order::Outcome outcome = order::run(std::move(request));
            CHECK((outcome.plan || stops(outcome.faults)));
            planned += outcome.plan ? 1 : 0;
        } catch (const ProgramError& error) {
            FAIL_CHECK(std::string(error.what()));
        }
    }
    CHECK(planned * 3 > jobs); // else the lines are nonsense
}

} // namespace
} // namespace pelt
