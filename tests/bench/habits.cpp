// SPDX-License-Identifier: MIT
// Shipped vehicles and films cut straight, against three habits of the trade (common practice, no
// source): one cut across the whole roll a panel; shelves filled by hand, first fit; the area on
// the vehicle and a quarter more.
//   bench_habits VEHICLES FILMS [EFFORT]
#include "order/order.hpp"
#include "read/read.hpp"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <string>
#include <vector>

namespace {

using namespace pelt;

std::shared_ptr<const Source> source_of(const std::filesystem::path& path) {
    std::ifstream file(path);
    return std::make_shared<const Source>(
        Source{path.string(), {std::istreambuf_iterator<char>(file), {}}});
}

struct Rectangle {
    Um along = 0;
    Um across = 0;
};

/// Every piece of the plan as it was cut, the longest first.
std::vector<Rectangle> rectangles_of(const Plan& plan) {
    std::vector<Rectangle> out;
    for (const UsedRoll& used : plan.layout().rolls)
        for (const Placement& p : used.placements) {
            const Piece& piece = plan.job().pieces[p.piece];
            const Box box = box_of(placed(piece.shapes[p.shape].outline.outer, p.turn, p.at));
            out.push_back({box.along(), box.across()});
        }
    std::sort(out.begin(), out.end(), [](const Rectangle& a, const Rectangle& b) {
        return std::tie(b.along, b.across) < std::tie(a.along, a.across);
    });
    return out;
}

double cut_for_each(const std::vector<Rectangle>& rectangles) {
    Um sum = 0;
    for (const Rectangle& r : rectangles)
        sum += r.along;
    return static_cast<double>(sum) / um_per_mm;
}

/// A shelf is as long as its first piece; each piece goes on the first shelf with room beside.
double shelves(const std::vector<Rectangle>& rectangles, Um usable) {
    std::vector<Um> free;
    Um sum = 0;
    for (const Rectangle& r : rectangles) {
        const auto shelf =
            std::find_if(free.begin(), free.end(), [&](Um room) { return room >= r.across; });
        if (shelf != free.end()) {
            *shelf -= r.across;
        } else {
            free.push_back(usable - r.across);
            sum += r.along;
        }
    }
    return static_cast<double>(sum) / um_per_mm;
}

double area_and_a_quarter(const Plan& plan) {
    double doubled = 0;
    for (const Piece& piece : plan.job().pieces)
        doubled += static_cast<double>(doubled_area(piece.wrapped.outer)) *
                   static_cast<double>(piece.ids.size());
    return doubled / 2 * 1.25 / static_cast<double>(plan.job().film.width) / um_per_mm;
}

struct Sums {
    double mine = 0;
    double bound = 0;
    double habits[3] = {0, 0, 0};
    std::vector<double> gaps;
};

void bench(const Vehicle& vehicle, const Film& film, int effort, Sums& sums) {
    order::Request request;
    request.vehicles = {vehicle};
    request.film = film;
    request.effort.amount = effort;
    const std::clock_t begin = std::clock();
    const order::Outcome outcome = order::run(std::move(request));
    const double cpu = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
    if (!outcome.plan) {
        std::printf("%-26.26s %-22.22s cannot be cut\n", vehicle.name.c_str(), film.name.c_str());
        return;
    }
    const Plan& plan = *outcome.plan;
    double mine = 0;
    for (const UsedRoll& used : plan.layout().rolls)
        mine += static_cast<double>(used.length) / um_per_mm;
    const double bound = static_cast<double>(plan.layout().bound.length) / um_per_mm;
    const std::vector<Rectangle> rectangles = rectangles_of(plan);
    const double habits[3] = {cut_for_each(rectangles), shelves(rectangles, film.usable_width()),
                              area_and_a_quarter(plan)};
    std::printf("%-26.26s %-22.22s %4zu %7.0f %7.0f %6.2f %8.0f %8.0f %8.0f %6.2f\n",
                vehicle.name.c_str(), film.name.c_str(), rectangles.size(), mine, bound,
                100 * (mine / bound - 1), habits[0], habits[1], habits[2], cpu);
    sums.mine += mine;
    sums.bound += bound;
    sums.gaps.push_back(mine / bound - 1);
    for (int i = 0; i < 3; ++i)
        sums.habits[i] += habits[i];
}

template <class T>
std::vector<T> all_of(const char* folder,
                      const std::function<read::Reading<T>(std::shared_ptr<const Source>)>& read) {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".yaml")
            paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<T> out;
    for (const auto& path : paths)
        if (auto reading = read(source_of(path)); reading.value)
            out.push_back(*std::move(reading.value));
    return out;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::fprintf(stderr, "usage: bench_habits VEHICLES FILMS [EFFORT]\n");
        return 2;
    }
    const int effort = argc > 3 ? std::stoi(argv[3]) : 1;
    const auto vehicles = all_of<Vehicle>(argv[1], [](auto s) { return read::vehicle(s); });
    const auto films = all_of<Film>(argv[2], [](auto s) { return read::film(s); });
    std::printf("%-26s %-22s %4s %7s %7s %6s %8s %8s %8s %6s\n", "vehicle", "film", "n", "mm",
                "bound", "gap %", "a cut", "shelves", "area+1/4", "cpu s");
    Sums sums;
    for (const Vehicle& vehicle : vehicles)
        for (const Film& film : films)
            bench(vehicle, film, effort, sums);
    if (sums.gaps.empty())
        return 1;
    std::sort(sums.gaps.begin(), sums.gaps.end());
    std::printf("median gap %.2f %%; all lengths against a cut for each %.1f %%, shelves %.1f %%, "
                "area and a quarter %.1f %%\n",
                100 * sums.gaps[sums.gaps.size() / 2], 100 * (sums.mine / sums.habits[0] - 1),
                100 * (sums.mine / sums.habits[1] - 1), 100 * (sums.mine / sums.habits[2] - 1));
    return 0;
}
