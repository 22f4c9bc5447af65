// SPDX-License-Identifier: MIT
#include "model/stock.hpp"

namespace pelt {

Money CostOfLength::of(Um length) const {
    const Int128 pm = Length::from_um(length).pm();
    const Int128 micros = (pm * price.micros() + by.pm() - 1) / by.pm();
    return Money::from_micros(static_cast<std::int64_t>(micros));
}

} // namespace pelt
