// SPDX-License-Identifier: MIT
#include "job.hpp"

namespace pelt::generated {
namespace {

std::string quoted(const std::string& word) {
    return word.find_first_of(" %,/") == std::string::npos ? word : "'" + word + "'";
}

void replace_first(std::string& text, const std::string& what, const std::string& by) {
    const std::size_t at = text.find(what);
    if (at != std::string::npos)
        text.replace(at, what.size(), by);
}

/// Something that no file of its kind may say.
void spoil_file(Draw& draw, Job& job) {
    std::string& vehicle = job.files["v.yaml"];
    std::string& film = job.files["film.yaml"];
    switch (draw.within(1, 7)) {
    case 1:
        replace_first(vehicle, "panel 1: {", "panel 1: {color: red, ");
        break;
    case 2:
        replace_first(vehicle, "panel 1: {", "panel 1: {count: 0, ");
        break;
    case 3:
        replace_first(vehicle, "panels:\n", "panels:\n  nothing: {}\n");
        break;
    case 4:
        replace_first(film, "roll: {width: ", "roll: {width: -");
        break;
    case 5:
        film += "kinds: cast\n";
        break;
    case 6:
        vehicle = vehicle.substr(0, vehicle.rfind('}'));
        break;
    default:
        replace_first(vehicle, "panels:\n",
                      "panels:\n  bow tie: {outline: [[0, 0], [1, 1], [1, 0], "
                      "[0, 1]], forward: up}\n");
        break;
    }
}

void spoil_command(Draw& draw, Job& job) {
    static const std::vector<std::vector<std::string>> wrong{{"--only", "no such panel"},
                                                             {"--times", "0"},
                                                             {"--by", "laser"},
                                                             {"--table", "1 mm"},
                                                             {"--width", "many"},
                                                             {"--sure", "200 %"},
                                                             {"--flaw", "3m..2m"},
                                                             {"--leave", "no such part"},
                                                             {"--colors"},
                                                             {"--effort", "1000"}};
    const std::vector<std::string>& words = draw.of(wrong);
    job.words.insert(job.words.end(), words.begin(), words.end());
}

} // namespace

void spoil(Draw& draw, Job& job) {
    job.spoilt = draw.one_in(2) ? Spoilt::file : Spoilt::command;
    if (job.spoilt == Spoilt::file)
        spoil_file(draw, job);
    else
        spoil_command(draw, job);
}

Job draw_job(std::uint64_t seed) {
    Draw draw(seed * 0x9e3779b9U + 1);
    Job job;
    job.seed = seed;
    const DrawnFilm film = draw_film(draw);
    const DrawnVehicle vehicle = draw_vehicle(draw, film);
    job.files = vehicle.scans;
    job.files["v.yaml"] = vehicle.text;
    job.files["film.yaml"] = film.text;
    draw_command(draw, vehicle, film, job);
    if (draw.one_in(20))
        spoil(draw, job);
    return job;
}

std::string text_of(const Job& job) {
    std::string text;
    for (const auto& [name, bytes] : job.files)
        text += "== file " + name + "\n" + bytes;
    text += "== run\npelt";
    for (const std::string& word : job.words)
        text += " " + quoted(word);
    return text + "\n";
}

} // namespace pelt::generated
