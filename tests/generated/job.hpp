// SPDX-License-Identifier: MIT
// Whole jobs made up at random: files and a command line. The same seed is the same job on every
// machine. Everything in them is invented.
#pragma once

#include "draw.hpp"

#include <map>
#include <string>
#include <vector>

namespace pelt::generated {

/// What the checks must know of a panel without asking the program.
struct DrawnPanel {
    std::string name;
    std::string group; ///< none: empty
    std::string extra; ///< none: empty
    std::vector<std::string> sides;
    int pieces_a_side = 1; ///< count × faces
    std::vector<std::string> inlays;
};

struct DrawnVehicle {
    std::string text;
    std::vector<DrawnPanel> panels;
    std::vector<std::string> hardware;
    std::map<std::string, std::string> scans; ///< file name, bytes
};

struct DrawnFilm {
    std::string text;
    std::string name;
    std::string direction;
    int width = 0;       ///< tenths of a millimetre
    int roll_length = 0; ///< the same; 0: without end
};

struct DrawnStretch {
    double from_mm = 0;
    double to_mm = 0;
};
/// Of a roll in stock: where no piece may lie, and its length; all from the file.
struct DrawnRoll {
    double length_mm = 0;
    std::vector<DrawnStretch> flaws; ///< those across the whole width
};

/// A panel's side that is to be cut, and how often.
struct Wanted {
    std::string panel;
    std::string side;
    int copies = 1;
    std::vector<std::string> inlays;
};

enum class Spoilt { no, file, command }; ///< broken on purpose

struct Job {
    std::uint64_t seed = 0;
    std::map<std::string, std::string> files;
    std::vector<std::string> words; ///< without the program and the outputs
    std::vector<Wanted> wanted;
    std::map<std::string, DrawnRoll> stock; ///< by name
    Spoilt spoilt = Spoilt::no;
    std::string units = "mm"; ///< of the sheet
    bool contour = false;
};

/// `direction` is the film's: a panel on the centre line must say where the nose is where it has
/// one.
DrawnVehicle draw_vehicle(Draw& draw, const DrawnFilm& film);
DrawnFilm draw_film(Draw& draw);
std::string draw_stock(Draw& draw, const DrawnFilm& film, std::map<std::string, DrawnRoll>& rolls);
/// The options, and which pieces are then wanted.
void draw_command(Draw& draw, const DrawnVehicle& vehicle, const DrawnFilm& film, Job& job);
/// Breaks a line of a file or a word of the command, on purpose.
void spoil(Draw& draw, Job& job);

Job draw_job(std::uint64_t seed);

/// The files and the command as text for a person, who can copy them.
std::string text_of(const Job& job);

} // namespace pelt::generated
