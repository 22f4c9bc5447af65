// SPDX-License-Identifier: MIT
// Contour cutting against published irregular strip packing instances.
//   bench_contour DIRECTORY [--cpu-seconds N | --seconds N | --effort N] [--threads N] [--seed N]
//                 [--only a,b] [--json FILE]
// A budget in CPU seconds counts what all threads used, so a loaded machine does not distort it:
// 20 CPU seconds stand for 10 s on two idle cores. The JSON also holds the course: after how many
// CPU seconds which density was reached.
// Each instance file holds `strip_width` and `items` (demand, rotations, outline, holes). Density
// is the pieces' area over width times length, in percent.
#include "nest/contour/contour.hpp"

#include "nest/contour/exact.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace {

using namespace pelt;

// Density in percent: best known layout, and mean over 100 runs of 20 minutes on three threads.
// Gardeyn, Vanden Berghe & Wauters (2025), arXiv:2509.13329, tables 2 and 3; the gardeyn rows are
// the best layouts kept with the logs published beside it (no mean).
struct Published {
    double best = 0;
    double mean = 0;
};
const std::map<std::string, Published> published{
    {"albano", {89.82, 89.47}},  {"dagli", {90.17, 89.26}},   {"fu", {92.41, 92.24}},
    {"jakobs1", {89.26, 89.09}}, {"marques", {92.02, 90.93}}, {"shapes0", {69.98, 68.60}},
    {"blaz1", {86.23, 84.68}},   {"shirts", {90.92, 89.66}},  {"dighe1", {100, 0}},
    {"dighe2", {100, 0}},        {"gardeyn0", {89.853, 0}},   {"gardeyn1", {90.230, 0}},
    {"gardeyn3", {88.679, 0}},   {"gardeyn4", {79.924, 0}},   {"gardeyn7", {87.015, 0}},
    {"gardeyn9", {86.735, 0}},
};

struct Instance {
    std::string name;
    double unit = 1; // micrometres
    std::vector<Piece> pieces;
    Roll roll;
    double area = 0; // square micrometres
};

struct Options {
    std::filesystem::path directory;
    double seconds = 10;
    double cpu_seconds = 0; // 0: by the clock
    int threads = 2;
    std::uint64_t seed = 1;
    int effort = 0; // 0: by the clock
    std::vector<std::string> only;
    std::string json;
};

struct Outcome {
    std::string name;
    double length = 0;
    double bound = 0;
    double density = 0;
    double cpu_seconds = 0;
    double seconds = 0;
    bool sound = false;
    std::vector<std::pair<double, double>> course; // CPU seconds, density then
};

Ring ring_of(const nlohmann::json& points, double unit, bool counter_clockwise) {
    Ring ring;
    for (const auto& p : points)
        ring.push_back(
            {std::llround(p[0].get<double>() * unit), std::llround(p[1].get<double>() * unit)});
    if ((doubled_area(ring) > 0) != counter_clockwise)
        std::reverse(ring.begin(), ring.end());
    return ring;
}

Instance read(const std::filesystem::path& path) {
    std::ifstream in(path);
    const nlohmann::json data = nlohmann::json::parse(in);
    Instance instance;
    instance.name = data["name"];
    const double width = data["strip_width"];
    // About five metres across, and a whole factor, so that whole coordinates stay exact.
    instance.unit = std::max(1.0, std::floor(5e6 / width));
    instance.roll.name = "new 1";
    instance.roll.width = std::llround(width * instance.unit);
    for (const auto& item : data["items"]) {
        Piece piece;
        CutShape shape;
        shape.outline.outer = ring_of(item["outline"], instance.unit, true);
        for (const auto& hole : item["holes"])
            shape.outline.holes.push_back(ring_of(hole, instance.unit, false));
        if (item["rotations"].is_array()) {
            for (const auto& degrees : item["rotations"])
                shape.turns.push_back(
                    {static_cast<int>(std::lround(degrees.get<double>() * 1000))});
        } else {
            shape.turns = {no_turn, quarter_turn, half_turn, three_quarter_turn};
        }
        piece.ids.resize(item["demand"].get<std::size_t>());
        DoubleArea doubled = doubled_area(shape.outline.outer);
        for (const Ring& hole : shape.outline.holes)
            doubled += doubled_area(hole);
        instance.area += static_cast<double>(doubled) / 2 * static_cast<double>(piece.ids.size());
        piece.shapes.push_back(std::move(shape));
        instance.pieces.push_back(std::move(piece));
    }
    return instance;
}

// Every copy once, inside the strip, clear of every other: no use of the search's own short cuts.
bool sound(const Instance& instance, const Layout& layout) {
    std::vector<Polygon> placed_pieces;
    std::vector<std::vector<int>> seen;
    for (const Piece& piece : instance.pieces)
        seen.emplace_back(piece.ids.size(), 0);
    for (const Placement& p : layout.rolls.front().placements) {
        ++seen[p.piece][p.copy];
        placed_pieces.push_back(
            placed(instance.pieces[p.piece].shapes[p.shape].outline, p.turn, p.at));
        const Box box = box_of(placed_pieces.back().outer);
        if (box.low.x < 0 || box.low.y < 0 || box.high.y > instance.roll.width ||
            box.high.x > layout.rolls.front().length)
            return false;
    }
    for (const auto& copies : seen)
        if (std::any_of(copies.begin(), copies.end(), [](int n) { return n != 1; }))
            return false;
    for (std::size_t i = 0; i < placed_pieces.size(); ++i)
        for (std::size_t j = i + 1; j < placed_pieces.size(); ++j)
            if (!nest::contour::keeps_clear(placed_pieces[i], placed_pieces[j], 0))
                return false;
    return layout.rolls.size() == 1;
}

Outcome run(const Instance& instance, const Options& options) {
    nest::Goal goal;
    goal.by = CutBy::contour;
    const auto start = std::chrono::steady_clock::now();
    const std::clock_t cpu = std::clock();
    const auto cpu_seconds = [&] {
        return static_cast<double>(std::clock() - cpu) / CLOCKS_PER_SEC;
    };
    const auto seconds = [&] {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    };
    double last = 0;
    Outcome outcome;
    outcome.name = instance.name;
    const auto density_at = [&instance](Um length) {
        return 100 * instance.area /
               (static_cast<double>(instance.roll.width) * static_cast<double>(length));
    };
    Um best = 0;
    const nest::Watch watch = [&](const nest::Progress& progress) {
        if (progress.best > 0 && progress.best != best) {
            best = progress.best;
            outcome.course.emplace_back(cpu_seconds(), density_at(best));
        }
        if (seconds() >= 2 * last + 1) {
            last = seconds();
            std::fprintf(stderr, "  %s %6.1f s  %.3f %%\n", instance.name.c_str(), last,
                         best > 0 ? density_at(best) : 0.0);
        }
        if (options.effort > 0)
            return true;
        return options.cpu_seconds > 0 ? cpu_seconds() < options.cpu_seconds
                                       : seconds() < options.seconds;
    };
    const nest::Effort effort{options.effort, options.threads, options.seed};
    const nest::Result result =
        nest::contour::nest(instance.pieces, std::span(&instance.roll, 1), goal, effort, watch);
    outcome.cpu_seconds = cpu_seconds();
    outcome.seconds = seconds();
    if (!result.layout)
        return outcome;
    const auto length = static_cast<double>(result.layout->rolls.front().length);
    outcome.length = length / instance.unit;
    outcome.bound = static_cast<double>(result.layout->bound.length) / instance.unit;
    outcome.density = density_at(result.layout->rolls.front().length);
    outcome.sound = sound(instance, *result.layout);
    return outcome;
}

void print(const Outcome& o) {
    const auto known = published.find(o.name);
    const Published p = known == published.end() ? Published{} : known->second;
    const auto ratio = [&](double reference) {
        char text[16] = "       -";
        if (reference > 0)
            std::snprintf(text, sizeof text, "%8.2f", 100 * o.density / reference);
        return std::string(text);
    };
    std::printf("%-24s %12.3f %12.3f %8.3f %8.2f %s %8.2f %s %8.1f %8.1f %s\n", o.name.c_str(),
                o.length, o.bound, o.density, p.best, ratio(p.best).c_str(), p.mean,
                ratio(p.mean).c_str(), o.cpu_seconds, o.seconds, o.sound ? "sound" : "WRONG");
    std::fflush(stdout);
}

std::optional<Options> parse(int argc, char** argv) {
    Options options;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word.rfind("--", 0) != 0) {
            options.directory = word;
            continue;
        }
        if (++i == argc)
            return std::nullopt;
        if (word == "--seconds")
            options.seconds = std::atof(argv[i]);
        else if (word == "--cpu-seconds")
            options.cpu_seconds = std::atof(argv[i]);
        else if (word == "--threads")
            options.threads = std::atoi(argv[i]);
        else if (word == "--seed")
            options.seed = static_cast<std::uint64_t>(std::atoll(argv[i]));
        else if (word == "--effort")
            options.effort = std::atoi(argv[i]);
        else if (word == "--json")
            options.json = argv[i];
        else if (word == "--only") {
            std::stringstream names(argv[i]);
            for (std::string name; std::getline(names, name, ',');)
                options.only.push_back(name);
        } else
            return std::nullopt;
    }
    return options.directory.empty() ? std::nullopt : std::optional(options);
}

void write_json(const std::vector<Outcome>& outcomes, const Options& options) {
    nlohmann::json rows = nlohmann::json::array();
    for (const Outcome& o : outcomes)
        rows.push_back({{"name", o.name},
                        {"length", o.length},
                        {"bound", o.bound},
                        {"density_percent", o.density},
                        {"cpu_seconds", o.cpu_seconds},
                        {"wall_seconds", o.seconds},
                        {"sound", o.sound},
                        {"course", o.course}});
    std::ofstream(options.json) << nlohmann::json{{"budget_seconds", options.seconds},
                                                  {"budget_cpu_seconds", options.cpu_seconds},
                                                  {"effort", options.effort},
                                                  {"threads", options.threads},
                                                  {"seed", options.seed},
                                                  {"instances", rows}}
                                       .dump(1)
                                << '\n';
}

} // namespace

int main(int argc, char** argv) {
    const std::optional<Options> options = parse(argc, argv);
    if (!options) {
        std::fprintf(stderr,
                     "usage: bench_contour DIRECTORY [--cpu-seconds N | --seconds N | --effort N] "
                     "[--threads N] [--seed N] [--only a,b] [--json FILE]\n");
        return 2;
    }
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(options->directory))
        if (entry.path().extension() == ".json" &&
            (options->only.empty() ||
             std::find(options->only.begin(), options->only.end(), entry.path().stem().string()) !=
                 options->only.end()))
            files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    std::printf("%-24s %12s %12s %8s %8s %8s %8s %8s %8s %8s\n", "instance", "length", "bound",
                "density", "best", "% of it", "mean", "% of it", "cpu s", "wall s");
    std::vector<Outcome> outcomes;
    bool all_sound = true;
    double ratios = 0;
    double least = 1000;
    int means = 0;
    for (const auto& file : files) {
        outcomes.push_back(run(read(file), *options));
        print(outcomes.back());
        all_sound = all_sound && outcomes.back().sound;
        const auto known = published.find(outcomes.back().name);
        if (known != published.end() && known->second.mean > 0) {
            const double ratio = 100 * outcomes.back().density / known->second.mean;
            ratios += ratio;
            least = std::min(least, ratio);
            ++means;
        }
    }
    if (means > 0)
        std::printf("ratios to the published mean: %.2f %% on average, %.2f %% at least\n",
                    ratios / means, least);
    if (!options->json.empty())
        write_json(outcomes, *options);
    return all_sound ? 0 : 1;
}
