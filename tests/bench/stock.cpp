// SPDX-License-Identifier: MIT
// A shelf of 30 remnants and a job of 40 pieces: what the order takes, and the processor time.
// Asked for: under 1 s by straight cuts, under 5 s along the outlines.
//   bench_stock [JOBS]
#include "order/order.hpp"
#include "read/read.hpp"

#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <memory>
#include <string>

namespace {

using namespace pelt;

std::shared_ptr<const Source> source(std::string text) {
    return std::make_shared<const Source>(Source{"bench.yaml", std::move(text)});
}

/// Knuth's 64-bit linear congruence (MMIX; from memory), its upper bits.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : state_(seed * 2 + 1) {}
    int between(int low, int high) {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        return low + static_cast<int>((state_ >> 33U) % static_cast<std::uint64_t>(high - low + 1));
    }

private:
    std::uint64_t state_;
};

/// Six-cornered panels of a car's sizes.
std::string panels(Chance& chance) {
    std::string text = "vehicle: V\ndemonstration: yes\npanels:\n";
    for (int i = 0; i < 40; ++i) {
        const int wide = chance.between(200, 1300);
        const int high = chance.between(150, 900);
        const int cut = chance.between(20, 140);
        const auto at = [](int x, int y) {
            return "[" + std::to_string(x) + ", " + std::to_string(y) + "]";
        };
        text += "  p" + std::to_string(i) + ": {outline: [" + at(0, 0) + ", " + at(wide - cut, 0) +
                ", " + at(wide, cut) + ", " + at(wide, high) + ", " + at(cut, high) + ", " +
                at(0, high - cut) + "], forward: right, edges: none" +
                (i % 10 == 0 ? ", batch free: yes}\n" : "}\n");
    }
    return text;
}

std::string remnants(Chance& chance, int longest) {
    std::string text = "stock:\n";
    for (int i = 0; i < 30; ++i)
        text += "  - {name: R" + std::to_string(i) +
                ", film: F, width: " + std::to_string(i % 3 == 0 ? 760 : 1524) +
                ", length: " + std::to_string(chance.between(500, longest)) + ", batch: B" +
                std::to_string(chance.between(1, 4)) + "}\n";
    return text;
}

void measure(int seed, CutBy by, int longest) {
    Chance chance(static_cast<std::uint64_t>(seed));
    order::Request request;
    request.vehicles = {*read::vehicle(source(panels(chance))).value};
    request.film = *read::film(source("film: F\ndemonstration: yes\nroll: {width: 1524 mm, trim: 6 "
                                      "mm}\ndirection: one-way\nallowances: {handling: 20, bleed: "
                                      "10, gap: 4}\nsold: [{by: 1 m, price: 14.20}]\n"))
                        .value;
    request.stock = read::stock(source(remnants(chance, longest))).value->rolls;
    request.by = by;
    const std::clock_t start = std::clock();
    const order::Outcome outcome = order::run(std::move(request));
    const double seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    std::printf("%-9s to %5d mm  seed %d: %6.2f s, %zu roll(s), %.2f m bought\n",
                std::string(name_of(by)).c_str(), longest, seed, seconds,
                outcome.plan ? outcome.plan->layout().rolls.size() : 0,
                outcome.order.length().mm() / 1000);
}

} // namespace

int main(int argc, char** argv) {
    const int jobs = argc > 1 ? std::atoi(argv[1]) : 3;
    for (const CutBy by : {CutBy::straight, CutBy::contour})
        for (const int longest : {1'500, 6'000})
            for (int seed = 1; seed <= jobs; ++seed)
                measure(seed, by, longest);
    return 0;
}
