// SPDX-License-Identifier: MIT
// All pairs of forms and their distance fields, built when first asked for.
#pragma once

#include "nest/contour/memory.hpp"

#include <atomic>
#include <cstdint>
#include <memory>
#include <mutex>
#include <vector>

namespace pelt::nest::contour {

/// Fields are exact this far beyond the distance that is asked.
inline constexpr double most_margin_um = 10;

/// A field and how to turn an offset into its frame.
struct FieldUse {
    const Field* field = nullptr;
    int quarters = 0; ///< turn of a world offset (moving - fixed)
};

/// The fields of every pair of forms at every relative quarter turn. What it returns depends only
/// on the forms, whoever asks first; safe to use from several threads.
class Fields {
public:
    /// Centres of pieces keep `need` micrometres between outlines, obstacles `need_obstacle`.
    Fields(std::vector<Form> forms, double need, double need_obstacle,
           std::shared_ptr<Memory> memory);

    /// How `moving` (a form and its quarters) stands to `fixed`.
    FieldUse between(std::uint32_t fixed, int fixed_quarters, std::uint32_t moving,
                     int moving_quarters) const {
        const bool swap = fixed > moving;
        const std::uint32_t a = swap ? moving : fixed;
        const std::uint32_t b = swap ? fixed : moving;
        const int a_quarters = swap ? moving_quarters : fixed_quarters;
        const int b_quarters = swap ? fixed_quarters : moving_quarters;
        const int relative = (b_quarters - a_quarters) & 3;
        const std::size_t slot = ((static_cast<std::size_t>(b) * (b + 1)) / 2 + a) * 4 +
                                 static_cast<std::size_t>(relative);
        const Field* field = slots_[slot].load(std::memory_order_acquire);
        if (field == nullptr)
            field = build(slot, a, b, relative);
        return {field, (swap ? 2 - a_quarters : -a_quarters) & 3};
    }

    double need(std::uint32_t a, std::uint32_t b) const {
        return forms_[a].obstacle || forms_[b].obstacle ? need_obstacle_ : need_;
    }
    double most_need() const { return need_ > need_obstacle_ ? need_ : need_obstacle_; }
    const Form& form(std::uint32_t index) const { return forms_[index]; }
    std::size_t bytes() const;

private:
    const Field* build(std::size_t slot, std::uint32_t a, std::uint32_t b, int relative) const;

    std::vector<Form> forms_;
    double need_;
    double need_obstacle_;
    std::size_t slot_count_;
    std::unique_ptr<std::atomic<const Field*>[]> slots_;
    std::shared_ptr<Memory> memory_;
    mutable std::mutex keeping_;
    mutable std::vector<std::shared_ptr<const Field>> kept_; // what the slots point to
};

} // namespace pelt::nest::contour
