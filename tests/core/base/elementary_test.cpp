// SPDX-License-Identifier: GPL-3.0-or-later
// Sine, exponential and their like give the same bits on every system (.cmake/Elementary.cmake): what 20,000 drawn
// arguments make is held against what the Windows program made of them.  Guards sameness, not truth.
#include <gtest/gtest.h>

#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <random>

namespace lapwright::base {
namespace {

// FNV-1a over whole doubles.
class Sum {
  public:
    void add(double value) { sum_ = (sum_ ^ std::bit_cast<std::uint64_t>(value)) * 1099511628211U; }
    [[nodiscard]] std::uint64_t value() const { return sum_; }

  private:
    std::uint64_t sum_ = 14695981039346656037U;
};

class Drawn {
  public:
    double between(double low, double high) {
        return low + (high - low) * (static_cast<double>(engine_() >> 11U) * 0x1p-53);
    }

  private:
    std::mt19937_64 engine_{7};
};

using Function = double (*)(double);

struct Case {
    const char* name;
    Function function;
    double low;
    double high;
    std::uint64_t sum;
};

const std::array cases{
    Case{"sin", std::sin, -500.0, 500.0, 0x551cfbfca5c9dbd5U},
    Case{"cos", std::cos, -500.0, 500.0, 0x68d71fb4ededb1dfU},
    Case{"tan", std::tan, -500.0, 500.0, 0xe1658f6538d1af9aU},
    Case{"asin", std::asin, -1.0, 1.0, 0x1fedf959d3f4ba7cU},
    Case{"acos", std::acos, -1.0, 1.0, 0xf72f6547ae8d1c34U},
    Case{"atan", std::atan, -50.0, 50.0, 0x0dae762bccf27cc4U},
    Case{"exp", std::exp, -50.0, 50.0, 0x8d0903ed17bbb32eU},
    Case{"exp2", std::exp2, -50.0, 50.0, 0xf356232aac6514d6U},
    Case{"expm1", std::expm1, -2.0, 2.0, 0x65f677b38990e004U},
    Case{"log", std::log, 1e-9, 9.0, 0xf0cded14f7f932d4U},
    Case{"log2", std::log2, 1e-9, 9.0, 0x2978a7c86c276d2bU},
    Case{"log10", std::log10, 1e-9, 9.0, 0x47f4bc43bce7833cU},
    Case{"log1p", std::log1p, -0.9, 9.0, 0x2a97dbb3b2635033U},
    Case{"sinh", std::sinh, -9.0, 9.0, 0xe1aa576f579a0a55U},
    Case{"cosh", std::cosh, -9.0, 9.0, 0xb8b43e16103514e8U},
    Case{"tanh", std::tanh, -9.0, 9.0, 0x3773d8821db9966fU},
    Case{"asinh", std::asinh, -99.0, 99.0, 0x0eadf927b4113645U},
    Case{"atanh", std::atanh, -0.99, 0.99, 0xcfd548c290afbd9fU},
    Case{"cbrt", std::cbrt, -9.0, 9.0, 0x34c899d2d2d40da4U},
    Case{"erf", std::erf, -4.0, 4.0, 0xb7eb8e89920002aaU},
    Case{"erfc", std::erfc, -4.0, 9.0, 0xfeca3d1216dcf27fU},
};

TEST(Elementary, OneArgument) {
    for (const Case& one : cases) {
        Drawn drawn;
        Sum sum;
        for (int i = 0; i < 20000; ++i)
            sum.add(one.function(drawn.between(one.low, one.high)));
        EXPECT_EQ(sum.value(), one.sum) << one.name;
    }
}

TEST(Elementary, TwoArguments) {
    Drawn drawn;
    Sum atan2;
    Sum hypot;
    Sum pow;
    Sum remainder;
    for (int i = 0; i < 20000; ++i) {
        const double x = drawn.between(-50.0, 50.0);
        const double y = drawn.between(-50.0, 50.0);
        atan2.add(std::atan2(x, y));
        hypot.add(std::hypot(x, y));
        pow.add(std::pow(std::abs(x), 0.1 * y));
        remainder.add(std::remainder(x, y));
    }
    EXPECT_EQ(atan2.value(), 0xd6f09452ef754d36U);
    EXPECT_EQ(hypot.value(), 0x27fff0e8775de2b1U);
    EXPECT_EQ(pow.value(), 0x71092e656acc4770U);
    EXPECT_EQ(remainder.value(), 0xa97f1878a61a66ccU);
}

} // namespace
} // namespace lapwright::base
