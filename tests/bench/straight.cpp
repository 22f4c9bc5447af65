// SPDX-License-Identifier: MIT
// Straight cutting against published rectangular strip packing instances.
//   bench_straight DIRECTORY [--turns no|yes|both] [--stages 2|3|any] [--effort N | --seconds N]
//                  [--threads N] [--seed N] [--only a,b] [--largest N] [--at-least N]
// Each instance file holds `strip_width` and `items` (w across, h along, demand), and what is
// known of the shortest length. One unit of an instance is one step of the ruler. `--at-least`
// asks for every rectangle so often that there are so many.
#include "nest/straight/straight.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace {

using namespace pelt;

struct Options {
    std::filesystem::path directory;
    std::string turns = "both";
    std::optional<int> stages;
    int effort = 1;
    double seconds = 0;
    int threads = 2;
    std::uint64_t seed = 1;
    std::size_t largest = 1'000'000;
    int at_least = 0;
    std::vector<std::string> only;
};

struct Instance {
    std::string name;
    std::vector<Piece> pieces;
    Roll roll;
    double area_bound = 0;
    std::optional<int> known[2]; ///< guillotine optimum without, with turns
};

Piece piece_of(int index, Um along, Um across, int demand, bool turns) {
    Piece piece;
    piece.wrapped.outer = {{0, 0}, {along, 0}, {along, across}, {0, across}};
    piece.direction = turns ? Direction::any : Direction::one_way;
    piece.shapes.push_back({piece.wrapped, {no_turn}});
    if (turns)
        piece.shapes.back().turns.push_back(quarter_turn);
    for (int copy = 1; copy <= demand; ++copy)
        piece.ids.push_back({0, index, Side::centre, copy, 1, 1, PieceKind::main, ""});
    return piece;
}

int times_for(const nlohmann::json& items, int at_least) {
    int count = 0;
    for (const auto& item : items)
        count += item["demand"].get<int>();
    return std::max(1, (at_least + count - 1) / count);
}

Instance instance_of(const std::filesystem::path& file, bool turns, int at_least) {
    const nlohmann::json json = nlohmann::json::parse(std::ifstream(file));
    const int times = times_for(json["items"], at_least);
    Instance out;
    out.name = file.stem().string();
    out.roll.width = json["strip_width"].get<Um>() * um_per_mm;
    int index = 0;
    double area = 0;
    for (const auto& item : json["items"]) {
        const Um along = item["h"].get<Um>() * um_per_mm;
        const Um across = item["w"].get<Um>() * um_per_mm;
        const int demand = times * item["demand"].get<int>();
        area += static_cast<double>(along) * static_cast<double>(across) * demand;
        const bool may_turn = item.contains("turns") ? item["turns"].get<bool>() : turns;
        out.pieces.push_back(piece_of(index++, along, across, demand, may_turn));
    }
    out.area_bound = std::ceil(area / static_cast<double>(out.roll.width) / 1000 - 1e-9);
    const char* keys[2] = {"guillotine_no_rotation", "guillotine_rotation"};
    for (int k = 0; k < 2; ++k)
        if (times == 1 && json["known_best"].contains(keys[k]) &&
            json["known_best"][keys[k]].contains("height"))
            out.known[k] = json["known_best"][keys[k]]["height"].get<int>();
    return out;
}

struct Outcome {
    double length = 0;
    double bound = 0;
    double wall = 0;
    double cpu = 0;
    std::string argument;
    bool shortest = false; ///< proved, for the stages asked for
};

Outcome solve(const Instance& instance, const Options& options) {
    const auto begin = std::chrono::steady_clock::now();
    const std::clock_t cpu = std::clock();
    const auto seconds = [&] {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    };
    nest::Goal goal;
    goal.stages = options.stages;
    const nest::Effort effort{options.seconds > 0 ? 0 : options.effort, options.threads,
                              options.seed};
    const nest::Watch watch = [&](const nest::Progress&) {
        return options.seconds <= 0 || seconds() < options.seconds;
    };
    const std::vector<Roll> rolls{instance.roll};
    const nest::Result result = nest::straight::nest(instance.pieces, rolls, goal, effort, watch);
    Outcome out;
    for (const UsedRoll& used : result.layout->rolls)
        out.length += static_cast<double>(used.length) / 1000;
    out.bound = static_cast<double>(result.layout->bound.length) / 1000;
    out.argument = result.layout->bound.argument;
    out.shortest = result.layout->shortest;
    out.wall = seconds();
    out.cpu = static_cast<double>(std::clock() - cpu) / CLOCKS_PER_SEC;
    return out;
}

Options read_options(int argc, char** argv) {
    Options options;
    options.directory = argv[1];
    for (int i = 2; i + 1 < argc; i += 2) {
        const std::string key = argv[i];
        const std::string value = argv[i + 1];
        if (key == "--turns")
            options.turns = value;
        else if (key == "--stages")
            options.stages = value == "any" ? std::nullopt : std::optional(std::stoi(value));
        else if (key == "--effort")
            options.effort = std::stoi(value);
        else if (key == "--seconds")
            options.seconds = std::stod(value);
        else if (key == "--threads")
            options.threads = std::stoi(value);
        else if (key == "--seed")
            options.seed = std::stoull(value);
        else if (key == "--largest")
            options.largest = std::stoull(value);
        else if (key == "--at-least")
            options.at_least = std::stoi(value);
        else if (key == "--only") {
            std::stringstream list(value);
            for (std::string name; std::getline(list, name, ',');)
                options.only.push_back(name);
        }
    }
    return options;
}

std::size_t count_of(const Instance& instance) {
    std::size_t count = 0;
    for (const Piece& piece : instance.pieces)
        count += piece.ids.size();
    return count;
}

void bench(const std::vector<std::filesystem::path>& files, const Options& options, bool turns) {
    std::printf("%s quarter turns\n%-36s %5s %7s %7s %7s %7s %7s %7s %7s\n",
                turns ? "with" : "without", "instance", "n", "area", "bound", "length", "known",
                "gap %", "wall s", "cpu s");
    double sum = 0;
    double sum_known = 0;
    int count = 0;
    int count_known = 0;
    for (const auto& file : files) {
        const Instance instance = instance_of(file, turns, options.at_least);
        if (count_of(instance) > options.largest)
            continue;
        const Outcome o = solve(instance, options);
        const std::optional<int> known = instance.known[turns ? 1 : 0];
        const double gap = 100 * (o.length / o.bound - 1);
        std::printf("%-36s %5zu %7.0f %7.0f %7.0f %7s %7.2f %7.2f %7.2f  %s%s\n",
                    instance.name.c_str(), count_of(instance), instance.area_bound, o.bound,
                    o.length, known ? std::to_string(*known).c_str() : "", gap, o.wall, o.cpu,
                    o.shortest ? "shortest possible; " : "", o.argument.c_str());
        std::fflush(stdout);
        sum += o.length / instance.area_bound - 1;
        ++count;
        if (known) {
            sum_known += o.length / *known - 1;
            ++count_known;
        }
    }
    std::printf("mean over the area bound %.2f %% (%d instances)", 100 * sum / std::max(count, 1),
                count);
    if (count_known > 0)
        std::printf(", over the known guillotine optimum %.2f %% (%d)",
                    100 * sum_known / count_known, count_known);
    std::printf("\n\n");
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::fprintf(stderr, "usage: bench_straight DIRECTORY [options]\n");
        return 2;
    }
    const Options options = read_options(argc, argv);
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(options.directory))
        if (entry.path().extension() == ".json" &&
            (options.only.empty() || std::find(options.only.begin(), options.only.end(),
                                               entry.path().stem().string()) != options.only.end()))
            files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    if (options.turns != "yes")
        bench(files, options, false);
    if (options.turns != "no")
        bench(files, options, true);
    return 0;
}
